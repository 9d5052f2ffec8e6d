#include "ui/window/scanner.h"

#include "ui/desk/scan_gap.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace riband::ui {

namespace {

constexpr int ShortestCode = 4;

void takeOut(const QString& burst) {
    auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    if (!field || field->isReadOnly()) return;
    const QString text = field->text();
    const auto at = field->cursorPosition() - burst.size();
    if (at < 0 || text.mid(at, burst.size()) != burst) return;
    field->setText(text.left(at) + text.mid(at + burst.size()));
    field->setCursorPosition(static_cast<int>(at));
}

} // namespace

Scanner::Scanner(std::function<bool(const QString&)> open, std::function<qint64()> now, QObject* parent)
    : QObject{parent}, open_{std::move(open)}, now_{std::move(now)} {}

/// An event that its receiver does not take goes on to the parents, past this filter again.
bool Scanner::seenBelow(const QWidget* receiver, const QEvent* event) {
    const bool again =
        event == event_ && receiver_ && receiver != receiver_ && receiver->isAncestorOf(receiver_);
    event_ = event;
    receiver_ = receiver;
    return again;
}

bool Scanner::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress || !watched->isWidgetType()) return false;
    if (QApplication::activeModalWidget()) return false; // what is scanned into a dialog is meant for it
    const auto* receiver = static_cast<const QWidget*>(watched);
    if (seenBelow(receiver, event) || alone_.contains(receiver)) return false;
    return keyPressed(*static_cast<QKeyEvent*>(event));
}

bool Scanner::keyPressed(const QKeyEvent& key) {
    // When it was struck, not when the window came to it: a search as one types may take longer than a gap.
    const qint64 now = key.timestamp() > 0 ? static_cast<qint64>(key.timestamp()) : now_();
    const bool fast = now - last_ <= longestScanGapMs;
    last_ = now;
    if (key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter) {
        const QString burst = std::exchange(burst_, {});
        if (!fast || burst.size() < ShortestCode || !open_(burst)) return false;
        takeOut(burst);
        return true;
    }
    if (key.text().isEmpty() || !key.text().front().isPrint()) return false;
    if (!fast) burst_.clear();
    burst_ += key.text();
    return false;
}

} // namespace riband::ui
