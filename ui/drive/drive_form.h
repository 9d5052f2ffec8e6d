#pragma once

#include "ui/drive/answer.h"

#include <QWidget>

#include <map>

class QFormLayout;
class QLineEdit;
class QStackedWidget;
class QTableView;

namespace riband::ui {

class PulleysModel;
class ToothWidget;

/// What is known of a drive, typed: two pulleys, or a table of more.
class DriveForm final : public QWidget {
    Q_OBJECT
public:
    explicit DriveForm(const belt::Tables& tables, QWidget* parent = nullptr);
    bool isMany() const;
    /// A layout that is still empty begins with the two pulleys.
    void setMany(bool many);
    TwoQuestion two() const;
    ManyQuestion many() const;
    /// A belt that is known takes the place of another; the pulleys stay.
    void putBelt(const belt::Reading& reading);
    void clear();
    /// What the answer complains of is shown as wrong; the profile by its tooth.
    void show(const DriveAnswer& answer);
    /// Where something is to be typed next.
    void goTo(DriveField field, int row);
    void focusFirstEmpty();
    /// The pulley of the table that has the focus.
    void removePulley();
    void movePulley(int by);

signals:
    void changed();

private:
    QWidget* buildCommon();
    QWidget* buildTwo();
    QWidget* buildMany();
    void add(QFormLayout& form, DriveField field, const QString& name, const QString& example);
    QString typed(DriveField field) const;
    void put(DriveField field, const QString& words);

    const belt::Tables& tables_;
    std::map<DriveField, QLineEdit*> fields_;
    ToothWidget* tooth_;
    QStackedWidget* stack_;
    PulleysModel* pulleys_;
    QTableView* table_;
    bool quiet_ = false;
};

} // namespace riband::ui
