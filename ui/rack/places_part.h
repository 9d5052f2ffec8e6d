#pragma once

#include "core/store/places.h"
#include "ui/desk/session.h"

#include <QDialog>
#include <QWidget>

class QTreeWidget;
class QTreeWidgetItem;

namespace riband::ui {

/// The places of the shop as a tree, with how many pieces lie in each; what a place is for is said here.
class PlacesPart final : public QWidget {
    Q_OBJECT
public:
    explicit PlacesPart(Session& session, QWidget* parent = nullptr);
    void refresh();

private:
    void buildView();
    void fill(QTreeWidgetItem& holder, const store::Place& place);
    const store::Place* current() const;
    std::vector<store::Place> chosen() const;
    void add();
    void change();
    void remove();
    void label();
    void print();
    /// Asks for the place and keeps what was answered; asks again while it is refused.
    void ask(store::Place place);

    Session& session_;
    std::vector<store::Place> places_;
    QTreeWidget* tree_;
};

/// The same for who does not see the Shop page: a stock manager, from the Rack.
class PlacesDialog final : public QDialog {
    Q_OBJECT
public:
    explicit PlacesDialog(Session& session, QWidget* parent = nullptr);
};

} // namespace riband::ui
