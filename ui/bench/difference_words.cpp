#include "ui/bench/difference_words.h"

#include "ui/words/words.h"

#include <QCoreApplication>

namespace riband::ui {

namespace {

struct DifferenceWords {
    Q_DECLARE_TR_FUNCTIONS(DifferenceWords)
};

} // namespace

QString differenceWords(Extent measured, Extent byFigures) {
    if (measured < byFigures)
        return DifferenceWords::tr("%1 less than by the figures: this is booked as a difference.")
            .arg(shown(byFigures - measured));
    if (measured > byFigures)
        return DifferenceWords::tr("%1 more than by the figures: this is booked as a difference.")
            .arg(shown(measured - byFigures));
    return {};
}

} // namespace riband::ui
