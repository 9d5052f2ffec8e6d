#include "tests/core/cutting/integer_program.h"

#include <algorithm>
#include <cmath>
#include <glpk.h>

// x[i][j] belts of line j from piece i, z[i] the piece is mounted, l[i][j] a belt of line j is cut last,
// b[i][k] what is left reaches point k of the worth curve (plain: the stub), v[i] the width left that counts
// (plain only). Widths in mm or ribs, as the solver's tolerances like them.

namespace riband::cutting::testing {

namespace {

class Program {
public:
    Program(const Problem& problem, const std::vector<Worth::Point>& points)
        : problem_{problem}, plain_{points.empty()}, unit_{problem.rules.unit() == Unit::Rib ? 1.0 : 1000.0},
          program_{glp_create_prob()} {
        glp_term_out(GLP_OFF);
        glp_set_obj_dir(program_, GLP_MIN);
        levels(points);
        for (const Piece& piece : problem.pieces)
            if (piece.kind != PieceKind::Ready) addPiece(piece);
        addDemands();
        addServed();
    }
    ~Program() { glp_delete_prob(program_); }
    Program(const Program&) = delete;
    Program& operator=(const Program&) = delete;

    std::optional<Optimum> solve(int milliseconds) {
        for (const auto& [column, width] : served_)
            glp_set_obj_coef(program_, column, -width);
        const auto most = run(milliseconds);
        if (!most) return std::nullopt;
        const double served = std::round(-*most * unit_) / unit_;
        glp_set_row_bnds(program_, servedRow_, GLP_LO, served, served);
        for (const auto& [column, width] : served_)
            glp_set_obj_coef(program_, column, 0);
        for (const auto& [column, cost] : costs_)
            glp_set_obj_coef(program_, column, glp_get_obj_coef(program_, column) + cost);
        const auto least = run(milliseconds);
        if (!least) return std::nullopt;
        return Optimum{std::llround(served * unit_), std::llround(*least * unit_)};
    }

private:
    double in(std::int64_t count) const { return static_cast<double>(count) / unit_; }
    double in(Extent extent) const { return in(extent.count()); }

    void levels(const std::vector<Worth::Point>& points) {
        const std::int64_t stub = problem_.rules.stub.count();
        if (plain_) {
            levels_.push_back({stub, 0});
            return;
        }
        std::int64_t reached = 0;
        for (const Worth::Point& point : points) {
            levels_.push_back({std::max(stub, point.extent), point.worth - reached});
            reached = point.worth;
        }
    }

    int column(double upper, bool whole) {
        const int index = glp_add_cols(program_, 1);
        glp_set_col_bnds(program_, index, upper > 0 ? GLP_DB : GLP_FX, 0, upper);
        if (whole) glp_set_col_kind(program_, index, GLP_IV);
        return index;
    }
    int row(const std::vector<std::pair<int, double>>& terms, int type, double low, double high) {
        std::vector<int> columns{0};
        std::vector<double> values{0};
        for (const auto& [c, value] : terms) {
            columns.push_back(c);
            values.push_back(value);
        }
        const int index = glp_add_rows(program_, 1);
        glp_set_row_bnds(program_, index, type, low, high);
        glp_set_mat_row(program_, index, static_cast<int>(terms.size()), columns.data(), values.data());
        return index;
    }

    void addPiece(const Piece& piece) {
        const Rules& rules = problem_.rules;
        const int z = column(1, true);
        // What is left: (extent - trim) z - sum of (width + kerf) x.
        std::vector<std::pair<int, double>> left{{z, in(piece.extent) - in(rules.trim)}};
        std::vector<std::pair<int, double>> last{{z, -1}}, held;
        for (std::size_t j = 0; j < problem_.lines.size(); ++j) {
            const Line& line = problem_.lines[j];
            const int x = column(static_cast<double>(line.quantity), true);
            const int l = column(1, true);
            columns_.push_back({j, x});
            served_.push_back({x, in(line.extent)});
            left.push_back({x, -in(line.extent) - in(rules.kerf)});
            last.push_back({l, 1});
            held.push_back({l, in(line.extent)});
            row({{x, 1}, {z, -static_cast<double>(line.quantity)}}, GLP_UP, 0, 0);
            row({{l, 1}, {x, -1}}, GLP_UP, 0, 0);
        }
        row(last, GLP_FX, 0, 0);
        std::vector<std::pair<int, double>> ended = left;
        ended[0].second -= in(rules.end);
        row(ended, GLP_LO, 0, 0);
        std::vector<std::pair<int, double>> heldRow = left;
        heldRow[0].second -= in(rules.stub);
        heldRow.insert(heldRow.end(), held.begin(), held.end());
        row(heldRow, GLP_LO, 0, 0);
        addWorth(piece, z, left);
    }

    void addWorth(const Piece& piece, int z, const std::vector<std::pair<int, double>>& left) {
        double whole = 0;
        for (const Level& level : levels_) {
            if (piece.extent.count() >= level.at) whole += in(level.worth);
            const int b = column(1, true);
            row({{b, 1}, {z, -1}}, GLP_UP, 0, 0);
            std::vector<std::pair<int, double>> reaches = left;
            reaches.push_back({b, -in(level.at)});
            row(reaches, GLP_LO, 0, 0);
            costs_.push_back({b, -in(level.worth)});
            if (plain_) addPlain(piece, b, left);
        }
        if (plain_) whole = piece.extent >= problem_.rules.stub ? in(piece.extent) : 0;
        costs_.push_back({z, whole + in(problem_.mountingCost)});
    }

    /// v <= left, v <= extent b.
    void addPlain(const Piece& piece, int b, const std::vector<std::pair<int, double>>& left) {
        const int v = column(in(piece.extent), false);
        std::vector<std::pair<int, double>> counts = left;
        counts.push_back({v, -1});
        row(counts, GLP_LO, 0, 0);
        row({{v, 1}, {b, -in(piece.extent)}}, GLP_UP, 0, 0);
        costs_.push_back({v, -1});
    }

    void addDemands() {
        for (std::size_t j = 0; j < problem_.lines.size(); ++j) {
            std::vector<std::pair<int, double>> all;
            for (const auto& [line, x] : columns_)
                if (line == j) all.push_back({x, 1});
            if (!all.empty()) row(all, GLP_UP, 0, static_cast<double>(problem_.lines[j].quantity));
        }
    }

    void addServed() { servedRow_ = row(served_, GLP_FR, 0, 0); }

    std::optional<double> run(int milliseconds) {
        if (served_.empty()) return 0;
        // Without GLPK's presolver, which gives up on a program that it can solve altogether.
        glp_smcp relaxation;
        glp_init_smcp(&relaxation);
        relaxation.msg_lev = GLP_MSG_OFF;
        glp_adv_basis(program_, 0);
        if (glp_simplex(program_, &relaxation) != 0 || glp_get_status(program_) != GLP_OPT)
            return std::nullopt;
        glp_iocp control;
        glp_init_iocp(&control);
        control.gmi_cuts = control.mir_cuts = control.cov_cuts = GLP_ON;
        control.tm_lim = milliseconds;
        control.tol_int = 1e-7;
        control.tol_obj = 1e-9;
        control.msg_lev = GLP_MSG_OFF;
        const int failed = glp_intopt(program_, &control);
        if (failed != 0 || glp_mip_status(program_) != GLP_OPT) return std::nullopt;
        return glp_mip_obj_val(program_);
    }

    struct Level {
        std::int64_t at, worth;
    };
    const Problem& problem_;
    bool plain_;
    double unit_;
    glp_prob* program_;
    std::vector<Level> levels_;
    std::vector<std::pair<std::size_t, int>> columns_; ///< line and x
    std::vector<std::pair<int, double>> served_, costs_;
    int servedRow_ = 0;
};

} // namespace

std::optional<Optimum> integerProgram(const Problem& problem, const std::vector<Worth::Point>& points,
                                      int milliseconds) {
    return Program{problem, points}.solve(milliseconds);
}

} // namespace riband::cutting::testing
