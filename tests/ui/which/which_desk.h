#pragma once

#include "core/shop/receive.h"
#include "tests/catch.h"
#include "ui/counter/counter_page.h"
#include "ui/which/sample_form.h"
#include "ui/which/which_dialog.h"

#include <QDialog>
#include <QTemporaryDir>

namespace riband::ui {

/// An invented shop with its Counter and the helper over it, wired as the window wires them. It has sleeves
/// of H8M 1200 (470 mm), S8M 960 (300 mm), XL 414 (250 mm) and PJ 1194 (60 ribs). Off screen.
class WhichDesk {
public:
    WhichDesk();
    ~WhichDesk();
    Session& session() { return *session_; }
    store::Connection& connection() { return session_->shop().connection; }
    CounterPage& counter() { return *counter_; }
    WhichDialog& which() { return *which_; }
    belt::Belt belt(const std::string& designation) const;
    std::size_t openOrders();

    /// Waits until no answer is on its way.
    void settle();
    /// Types on the Counter's line.
    void say(const QString& words);
    /// Types into the field of that name.
    void into(QWidget& owner, const char* field, const QString& words);
    /// Opens the helper.
    void bring();
    /// Types a figure in the helper.
    void measure(belt::identify::Measure what, const QString& figure);
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    /// When the next dialog opens, `answer` is given it.
    void answering(const std::function<void(QDialog&)>& answer);
    /// The likeliest in the helper.
    std::string best();

private:
    QTemporaryDir folder_;
    Moment time_;
    std::unique_ptr<Session> session_;
    std::unique_ptr<CounterPage> counter_;
    std::unique_ptr<WhichDialog> which_;
};

/// Kept in the build folder, for people to look at.
void keepPicture(QWidget& widget, const QString& name);

inline Extent mm(std::int64_t millimetres) { return Width::millimetres(millimetres); }

} // namespace riband::ui
