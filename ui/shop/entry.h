#pragma once

#include <QLineEdit>

#include <functional>

class QFormLayout;

namespace riband::ui {

/// A field for one figure; shows at once, and says in words, when what is typed is none.
class Entry final : public QLineEdit {
    Q_OBJECT
public:
    using Reads = std::function<bool(const std::string&)>;
    using Expected = std::function<QString(const std::string&)>;
    /// `expected`: a sentence, with an example; or one for what was typed.
    Entry(const QString& name, Reads reads, Expected expected, QWidget* parent = nullptr);
    Entry(const QString& name, Reads reads, const QString& expected, QWidget* parent = nullptr);
    std::string typed() const { return text().trimmed().toStdString(); }
    bool isRight() const { return reads_(typed()); }
    /// With its name before it; `unit` is shown behind the name.
    void addTo(QFormLayout& form, const QString& unit = {});
    /// "Tax: a percentage from 0 to 100, for example 20.", of the first wrong one in the form, which gets the
    /// keys; "" if all are right.
    static QString firstWrong(const QWidget& form);

private:
    QString name_;
    Reads reads_;
    Expected expected_;
};

} // namespace riband::ui
