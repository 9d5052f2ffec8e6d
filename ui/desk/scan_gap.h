#pragma once

namespace riband::ui {

/// Scanners send a character every 1 to 20 ms; the fastest typists need 60 (common practice, no source).
inline constexpr int longestScanGapMs = 40;

} // namespace riband::ui
