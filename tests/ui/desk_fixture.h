#pragma once

#include "core/shop/receive.h"
#include "tests/catch.h"
#include "ui/desk/session.h"
#include "ui/window/window.h"

#include <QDialog>
#include <QPointer>
#include <QTemporaryDir>
#include <QTimer>

namespace riband::ui {

/// An invented shop in a file, furnished for days at the counter: of H8M 1200 the remnants 101 and 128.5 mm
/// and a sleeve of 470; of T10 1250 a sleeve; of PJ 1194 a ready belt of 6 ribs and a sleeve of 60 ribs; of
/// XL 414 a sleeve. It is nine in the morning of 2 March 2026, and a minute later at each look at the clock.
class DeskShop {
public:
    DeskShop();
    Session& session() { return *session_; }
    store::Connection& connection() { return session_->shop().connection; }
    QString papers() const { return folder_.filePath(QStringLiteral("papers")); }
    QString file() const { return folder_.filePath(QStringLiteral("shop.riband")); }
    belt::Belt belt(const std::string& designation) const;
    store::PieceId piece(const std::string& designation, Extent extent,
                         cutting::PieceKind kind = cutting::PieceKind::Sleeve);
    std::vector<store::Order> orders(store::OrderState state);
    /// Every disagreement of the book in words; empty if it is right.
    std::vector<std::string> disagreements();

private:
    QTemporaryDir folder_;
    Moment time_;
    std::unique_ptr<Session> session_;
};

inline Extent mm(std::int64_t millimetres) { return Width::millimetres(millimetres); }
inline Extent um(std::int64_t micrometres) { return Width::micrometres(micrometres); }

/// A window on the shop, shown off screen.
class DeskWindow {
public:
    explicit DeskWindow(DeskShop& shop);
    Window& window() { return window_; }
    CounterPage& counter() { return window_.counter(); }
    /// Waits until the final suggestion stands.
    void settle();
    /// Types on the Counter's line and waits for the answer.
    void type(const QString& words);
    /// Presses a key where the focus is.
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    /// When the next dialog opens, `answer` is given it; it must close it. Takes the place of an answer that
    /// no dialog has asked for yet.
    void answering(const std::function<void(QDialog&)>& answer);

private:
    Window window_;
    QPointer<QTimer> look_;
};

} // namespace riband::ui
