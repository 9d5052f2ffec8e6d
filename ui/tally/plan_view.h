#pragma once

#include "core/shop/counting/plan.h"
#include "ui/desk/list_file.h"
#include "ui/desk/reading.h"

#include <QWidget>

class QLabel;
class QListWidget;
class QSpinBox;

namespace riband::ui {

/// What to count: counts that somebody has left, then today's places, as many as the minutes allow, each with
/// why. The plan is read in a worker.
class PlanView final : public QWidget {
    Q_OBJECT
public:
    explicit PlanView(Session& session, QWidget* parent = nullptr);
    void refresh();
    /// The place that is marked; none if there is nothing to count.
    std::optional<std::string> place() const;
    /// The open count of that place, if it is one.
    std::optional<store::CountId> openCount() const;
    /// Its pieces, those that gain most first; of an open count nothing.
    const std::vector<shop::counting::PieceTask>& why() const;
    /// The day's plan as it stands.
    ListRows list() const;
    /// Marks another line, so many below.
    void mark(int by);
    bool settled() const { return !reading_->running(); }

signals:
    void marked();
    /// By the mouse: this place is to be counted now.
    void wanted();
    /// The minutes are told.
    void left();

private:
    struct Row {
        std::string place;
        std::optional<store::CountId> open{};
        std::vector<shop::counting::PieceTask> why{};
    };
    QWidget* buildHead();
    void readPlan();
    void showPlan(const std::vector<shop::counting::PlaceTask>& plan);
    void add(Row row, const QString& words);
    void listOpen();
    const Row* current() const;
    QString sumOf(const std::vector<shop::counting::PlaceTask>& plan) const;

    Session& session_;
    Reading* reading_;
    std::vector<Row> rows_;
    bool told_ = false; ///< the minutes, else they are the shop's
    QSpinBox* minutes_;
    QListWidget* list_;
    QLabel* sum_;
};

} // namespace riband::ui
