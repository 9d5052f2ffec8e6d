#pragma once

#include "ui/desk/session.h"

#include <QWidget>

class QTableView;

namespace riband::ui {

class PeopleModel;

/// Who acts in this shop, in which role, and behind which lock.
class PeoplePart final : public QWidget {
    Q_OBJECT
public:
    explicit PeoplePart(Session& session, QWidget* parent = nullptr);
    void refresh();

private:
    void buildView();
    void add();
    void change();
    /// Asks for the person and keeps what was answered; asks again while it is refused.
    void ask(store::Person person, bool isNew);
    bool keep(const store::Person& person, bool isNew, const std::optional<std::string>& number);

    Session& session_;
    PeopleModel* model_;
    QTableView* table_;
};

} // namespace riband::ui
