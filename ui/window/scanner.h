#pragma once

#include <QObject>
#include <QString>

#include <functional>
#include <set>

class QKeyEvent;
class QWidget;

namespace riband::ui {

/// A scanner types faster than anybody and ends with Enter. What it typed is taken out of the field it fell
/// into, if it is a code that is known.
class Scanner final : public QObject {
    Q_OBJECT
public:
    /// `open` shows what the code names; false if it names nothing. `now` in ms, for keys that don't
    /// tell when they were struck.
    Scanner(std::function<bool(const QString&)> open, std::function<qint64()> now, QObject* parent = nullptr);
    /// A field that reads codes by itself.
    void leaveAlone(const QWidget* field) { alone_.insert(field); }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool seenBelow(const QWidget* receiver, const QEvent* event);
    bool keyPressed(const QKeyEvent& key);
    std::function<bool(const QString&)> open_;
    std::function<qint64()> now_;
    std::set<const QWidget*> alone_;
    const QWidget* receiver_ = nullptr;
    const QEvent* event_ = nullptr;
    QString burst_;
    qint64 last_ = 0;
};

} // namespace riband::ui
