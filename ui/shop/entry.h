#pragma once

#include <QLineEdit>

#include <functional>

class QFormLayout;

namespace riband::ui {

/// A field for one figure; shows at once when what is typed is none.
class Entry final : public QLineEdit {
    Q_OBJECT
public:
    using Reads = std::function<bool(const std::string&)>;
    Entry(const QString& name, Reads reads, QWidget* parent = nullptr);
    std::string typed() const { return text().trimmed().toStdString(); }
    bool isRight() const { return reads_(typed()); }
    /// With its name before it; `unit` is shown behind the name.
    void addTo(QFormLayout& form, const QString& unit = {});

private:
    QString name_;
    Reads reads_;
};

} // namespace riband::ui
