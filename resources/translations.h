#pragma once

namespace riband {

/// Lets the program speak the language of the computer, or English where there is no translation: English,
/// too, has one day and two days. To be called once, when there is an application.
void loadTranslation();

} // namespace riband
