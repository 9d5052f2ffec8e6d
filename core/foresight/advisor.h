#pragma once

#include "core/foresight/choice.h"
#include "core/foresight/fit.h"

namespace riband::foresight {

/// Decides what to cut for the orders of one belt: learns from them, keeps its worth table fresh in slices,
/// and answers. The same setting, seed and orders give the same answers.
class Advisor final : public Player {
public:
    struct Knobs {
        Layer layer = Layer::LookAhead;
        Fit::Knobs fit;
        LookAhead::Knobs lookAhead;
        int unitsAnAnswer = 400; ///< of fitting, with each answer
    };
    /// Takes some tenths of a second: the first worth table is made from the prior alone.
    explicit Advisor(Setting setting) : Advisor{std::move(setting), Knobs{}} {}
    Advisor(Setting setting, Knobs knobs);
    ~Advisor() override;

    Answer answer(const Order& order) override;

    const WorthTable& table() const { return fit_.table(); }
    const Outlook& outlook() const { return outlook_; }

private:
    struct Opened {
        PieceName name;
        double day; ///< its sleeve was opened
    };
    void expire(double day);
    void refresh(double day);
    void serve(const Asked& asked, double day, bool mayFill, Answer& answer);
    void book(const Asked& asked, const Way& way, double day, Answer& answer);
    Mounting mountingOf(const Asked& asked, const Share& share, const Fill::Choice& rest);

    Setting setting_;
    Knobs knobs_;
    Outlook outlook_;
    Fit fit_;
    Chooser chooser_;
    Stock stock_; ///< remnants are named by their key in opened_
    std::map<std::int32_t, Opened> opened_;
    std::int32_t nextKey_ = 1;
    PieceName nextName_ = 1;
    std::uint64_t decisions_ = 0;
};

} // namespace riband::foresight
