#pragma once

#include "ui/desk/session.h"

#include <QWidget>

class QLineEdit;
class QSortFilterProxyModel;
class QTableView;

namespace riband::ui {

class BeltsModel;

/// The shop's belts: found by typing, changed one by one.
class BeltsPart final : public QWidget {
    Q_OBJECT
public:
    explicit BeltsPart(Session& session, QWidget* parent = nullptr);
    void refresh();

private:
    void buildView();
    void changeBelt();
    void save();
    Session& session_;
    BeltsModel* model_;
    QSortFilterProxyModel* filter_;
    QLineEdit* words_;
    QTableView* table_;
};

} // namespace riband::ui
