#pragma once

#include "core/shop/buying/what_if.h"
#include "ui/review/review_part.h"

class QAction;
class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QProgressBar;
class QSpinBox;
class QTableView;

namespace riband::ui {

class LongWork;
class ReplayModel;
class Session;

/// The shop's last year played again with something otherwise, side by side with how it is.
class WhatIfPart final : public ReviewPart {
    Q_OBJECT
public:
    explicit WhatIfPart(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("What if"); }
    QString fileName() const override { return QStringLiteral("what-if"); }
    bool onlyForOwner() const override { return true; }
    void show(const shop::Period& period) override;
    shop::ReportTable table() const override;
    bool settled() const override;

private:
    void buildActions();
    void buildView();
    QWidget* buildForm();
    void addRow(QFormLayout& form, const QString& words, QWidget* field);
    shop::WhatIf whatIf() const;
    void fillProfiles();
    void play();
    void showResult(const shop::ReplayResult& result);

    Session& session_;
    LongWork* work_;
    ReplayModel* model_;
    QDoubleSpinBox *trim_, *sleeve_, *least_, *price_, *service_;
    QSpinBox *lead_, *years_;
    QCheckBox* together_;
    QComboBox *profile_, *from_;
    QLabel* headline_;
    QProgressBar* progress_;
    QTableView* table_;
    QAction *play_ = nullptr, *stop_ = nullptr;
};

} // namespace riband::ui
