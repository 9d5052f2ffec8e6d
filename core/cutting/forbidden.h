#pragma once

#include "core/cutting/setup.h"

namespace riband::cutting {

/// It must not be cut so: another shaft or cutter is needed, or the word of the belt's maker.
constexpr bool forbids(SetUp::Remark remark) {
    using Remark = SetUp::Remark;
    return remark == Remark::ShaftUnderSmallest || remark == Remark::SteelCord ||
           remark == Remark::AramidCord || remark == Remark::Polyurethane;
}

} // namespace riband::cutting
