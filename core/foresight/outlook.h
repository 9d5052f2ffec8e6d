#pragma once

#include "core/foresight/answer.h"
#include "core/foresight/dice.h"

#include <array>
#include <map>

namespace riband::foresight {

/// What orders are to be expected, learned from the shop's own.
///
/// Widths: Dirichlet with a prior weight of 6 lines, 85 % of it on the listed widths, 15 % spread over odd
/// ones. An odd width seen three times stands for itself, before that it mostly tells of its neighbourhood.
/// Three memories (never forget, 1.5 % a line, 6 % a line) bet on each next line and are trusted by their
/// luck (fixed share, Herbster and Warmuth, Machine Learning 32, 1998): a mix that stays is learned sharply,
/// one that swings is followed. Quantities and lines of an order: Dirichlet. Rate: Gamma with slow
/// forgetting.
class Outlook {
public:
    explicit Outlook(const Setting& setting);

    void learn(const Order& order);
    double ordersPerYear() const;
    std::int64_t learned() const { return learned_; } ///< orders
    int timesSeen(Size width) const;                  ///< lines of this width so far

    /// An order as they may come. Lines have different widths.
    void draw(Dice& dice, std::vector<Line>& lines) const;
    struct Share {
        Size width;
        double share;
    };
    const std::vector<Share>& widths() const { return widths_; } ///< shares sum to 1
    double shareOfQuantity(int quantity) const;
    double shareOfLines(int lines) const;
    double meanWidthOfOrder() const; ///< belts of an order together

private:
    static constexpr std::size_t memories = 3;
    struct Seen {
        std::array<double, memories> weight{};
        int times = 0;
    };
    void learnWidth(Size width);
    void spread();
    void addAround(std::map<Size, double>& odd, Size width, double weight) const;
    double shareOfListed(Size width, std::size_t memory) const;

    Setting setting_;
    std::map<Size, Seen> seen_;
    std::array<double, memories> total_{};
    std::array<double, memories> trust_{};
    std::map<int, double> quantities_; ///< with the prior
    double quantityTotal_ = 0;
    std::array<double, 4> lineCounts_{};
    double rateOrders_ = 0, rateYears_ = 0; ///< remembered
    double lastDay_ = 0;
    std::int64_t learned_ = 0;
    std::vector<Share> widths_;
    std::vector<double> upTo_; ///< running sums of widths_
    std::vector<std::pair<int, double>> quantityUpTo_;
};

} // namespace riband::foresight
