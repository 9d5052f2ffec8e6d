#pragma once

#include "ui/review/reading.h"
#include "ui/review/report_view.h"
#include "ui/review/review_part.h"

class QLabel;
class QStackedWidget;
class QTableView;
class QVBoxLayout;

namespace riband::ui {

class ReportTableModel;

/// A report that is read as a whole and shown as pictures under a line of words, or as its figures.
class ReadPart final : public ReviewPart {
    Q_OBJECT
public:
    struct About {
        QString title;
        QString fileName;
        bool onlyForOwner = false;
        ReportView (*read)(const shop::Shop& shop, const shop::Period& period);
    };
    ReadPart(Session& session, About about, QWidget* parent = nullptr);

    QString title() const override { return about_.title; }
    QString fileName() const override { return about_.fileName; }
    bool onlyForOwner() const override { return about_.onlyForOwner; }
    void show(const shop::Period& period) override;
    bool hasPicture() const override { return true; }
    void showFigures(bool figures) override;
    bool isOfPeriod() const override { return true; }
    shop::ReportTable table() const override { return view_.table; }
    bool settled() const override { return !reading_->running(); }
    /// The movements behind the row of the figures that is chosen.
    void drill();

private:
    QWidget* buildPictures();
    QWidget* buildFigures();
    void showView(ReportView view);

    Session& session_;
    About about_;
    Reading* reading_;
    ReportView view_;
    QLabel *headline_, *remarks_;
    QVBoxLayout* charts_ = nullptr;
    QStackedWidget* stack_;
    QTableView* figures_;
    ReportTableModel* model_;
};

} // namespace riband::ui
