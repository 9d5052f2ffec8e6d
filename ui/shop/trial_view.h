#pragma once

#include "core/shop/preview.h"
#include "ui/desk/session.h"

#include <QWidget>

class QAction;
class QLabel;
class QProgressBar;
class QTableWidget;

namespace riband::ui {

class LongWork;

/// What figures that are not saved yet would come to: tried on an invented run of the orders to be expected,
/// by a thread that can be stopped.
class TrialView final : public QWidget {
    Q_OBJECT
public:
    /// Reads what is to be tried, in another thread; nothing if there is nothing to try it on.
    using Ask = std::function<std::optional<shop::Trial>(const shop::Shop&)>;
    /// `asks`: with the figures as they stand on the form; nothing if one is wrong, which it has said. Its
    /// keys work anywhere on the form.
    TrialView(Session& session, QWidget& form, std::function<std::optional<Ask>()> asks);
    bool trying() const;
    QString outcome() const; ///< the sentence
    const QTableWidget& figures() const { return *figures_; }

private:
    void buildTable();
    void tryOut();
    void stop();
    void end();
    void show(const shop::Trial& trial, const shop::TrialOutcome& outcome);

    Session& session_;
    std::function<std::optional<Ask>()> asks_;
    LongWork* work_;
    QAction *try_ = nullptr, *halt_ = nullptr;
    QProgressBar* progress_;
    QTableWidget* figures_; ///< as it is, as it stands on the form, and what differs
    QLabel* outcome_;
};

} // namespace riband::ui
