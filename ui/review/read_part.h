#pragma once

#include "ui/desk/reading.h"
#include "ui/review/report_view.h"
#include "ui/review/review_part.h"

class QAction;
class QLabel;
class QProgressBar;
class QStackedWidget;
class QTableView;
class QVBoxLayout;

namespace riband::ui {

class LongWork;
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
        /// What may be asked for as well and takes long: its name, and how.
        QString more{};
        ReportView (*think)(const shop::Shop& shop, const shop::Period& period,
                            const foresight::Work& work) = nullptr;
        /// The same beside earlier periods, by a key.
        ReportView (*compare)(const shop::Shop& shop, const shop::Period& period) = nullptr;
    };
    ReadPart(Session& session, About about, QWidget* parent = nullptr);

    QString title() const override { return about_.title; }
    QString fileName() const override { return about_.fileName; }
    bool onlyForOwner() const override { return about_.onlyForOwner; }
    void show(const shop::Period& period) override;
    void forget() override;
    bool hasPicture() const override { return true; }
    void showFigures(bool figures) override;
    bool isOfPeriod() const override { return true; }
    shop::ReportTable table() const override { return view_.table; }
    bool settled() const override;
    /// What stands behind the figure that is chosen.
    void drill();

private:
    QWidget* buildPictures();
    QWidget* buildFigures();
    QWidget* buildLonger();
    QWidget* buildComparison();
    void think();
    void showView(ReportView view);

    Session& session_;
    About about_;
    Reading *reading_, *behind_;
    LongWork* work_;
    shop::Period period_{};
    ReportView view_;
    QLabel *headline_, *remarks_;
    QVBoxLayout* charts_ = nullptr;
    QStackedWidget* stack_;
    QTableView* figures_;
    ReportTableModel* model_;
    QProgressBar* progress_ = nullptr;
    QAction *think_ = nullptr, *stop_ = nullptr, *compare_ = nullptr;
};

} // namespace riband::ui
