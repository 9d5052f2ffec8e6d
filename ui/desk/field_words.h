#pragma once

#include <QLabel>

#include <functional>
#include <vector>

class QLineEdit;

namespace riband::ui {

/// The one way in which every form says that a field holds what can't be meant: a red edge, and in words
/// what is expected there. A label, put below the fields; it takes no room while nothing is wrong.
class FieldWords final : public QLabel {
    Q_OBJECT
public:
    /// A sentence, with an example, of what is expected if `typed` (without the spaces round it) is not it;
    /// empty if it is. ui/words/entry_words.h has the usual ones.
    using Wrong = std::function<QString(const QString& typed)>;
    explicit FieldWords(QWidget* parent = nullptr);
    /// The field has its name already. While it is empty it is judged only when somebody goes on.
    void watch(QLineEdit& field, Wrong wrong);
    /// Looks again: what is expected may hang on other fields.
    void look();
    /// A new form: what is empty is not judged yet.
    void begin();
    /// All that was typed, and what was not, is right.
    bool right() const;
    /// Somebody goes on: true if all is right. Else it is said, and the first wrong field has the keys.
    bool demand();

private:
    void makeRoom();
    struct Watched {
        QLineEdit* field;
        Wrong wrong;
    };
    QString wrongOf(const Watched& watched) const;
    std::vector<Watched> watched_;
    bool demanded_ = false;
};

/// Of a field that may stay empty.
FieldWords::Wrong orEmpty(FieldWords::Wrong wrong);

} // namespace riband::ui
