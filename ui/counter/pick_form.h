#pragma once

#include "ui/counter/inquiry.h"
#include "ui/desk/session.h"

#include <QWidget>

class QLineEdit;
class QListView;
class QListWidget;
class QSpinBox;

namespace riband::ui {

class LengthsModel;
class ProfilesModel;

/// For those who would rather pick than type: the profile by its drawing or name, a length that exists, the
/// width, how many. What is picked is put in words on the line, and what is typed there shows here.
class PickForm final : public QWidget {
    Q_OBJECT
public:
    explicit PickForm(Session& session, QWidget* parent = nullptr);
    /// Marks what is kept and what is here; reads the store.
    void refresh();
    /// Shows what was understood of the line, and says nothing.
    void show(const Inquiry& inquiry);

signals:
    void picked(const QString& words);
    void done(); ///< Enter or Escape

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* buildProfiles();
    QWidget* buildLengths();
    QWidget* buildWidths();
    void connectAll();
    void profileChanged();
    void fillWidths(const belt::Profile& profile);
    void findProfile(const QString& typed);
    void findLength(const QString& typed);
    void setWidth(Extent extent);
    void tell();
    const belt::Profile* profile() const;
    std::optional<belt::Belt> belt() const;
    std::optional<Extent> width() const;

    Session& session_;
    ProfilesModel* profiles_;
    LengthsModel* lengths_;
    QLineEdit *profileName_, *lengthName_, *widthText_;
    QListView *profileList_, *lengthList_;
    QListWidget* widthList_;
    QSpinBox* quantity_;
    std::vector<Extent> widths_;
    std::map<std::string, Extent> here_;
    bool showing_ = false; ///< the line speaks, not the hand
};

} // namespace riband::ui
