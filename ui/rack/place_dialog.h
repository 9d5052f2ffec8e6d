#pragma once

#include "core/store/places.h"
#include "ui/desk/session.h"

#include <QDialog>

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace riband::ui {

class FieldWords;

/// One place: its name, how large it is, what it stands in, what it is kept for.
class PlaceDialog final : public QDialog {
    Q_OBJECT
public:
    /// A place with the id 0 is new.
    PlaceDialog(Session& session, const store::Place& place, QWidget* parent = nullptr);
    store::Place place() const; ///< as typed; whole once the dialog is accepted
    void accept() override;

private:
    void buildView();
    void watchFields();
    QString wrongName(const QString& typed);
    QString wrongParent(const QString& typed);
    QString wrongBelt(const QString& typed);
    const store::Place* placeNamed(const QString& name) const;

    Session& session_;
    store::Place place_;
    std::vector<store::Place> places_;
    QLineEdit *name_, *parent_, *belt_;
    QComboBox* level_;
    QCheckBox* front_;
    FieldWords* wrong_;
};

} // namespace riband::ui
