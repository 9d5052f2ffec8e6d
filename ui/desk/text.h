#pragma once

#include <QFont>
#include <QLabel>

namespace riband::ui {

enum class Tone { Ink, Quiet, Warm, Cool, Danger, Ok };

/// Words in one of the sizes and tones of the look; follows the shade.
class Text final : public QLabel {
    Q_OBJECT
public:
    explicit Text(int pixels, Tone tone = Tone::Ink, QFont::Weight weight = QFont::Normal,
                  QWidget* parent = nullptr);
    void setTone(Tone tone);

protected:
    void changeEvent(QEvent* event) override;

private:
    void colour();
    int pixels_;
    Tone tone_;
    QFont::Weight weight_;
};

} // namespace riband::ui
