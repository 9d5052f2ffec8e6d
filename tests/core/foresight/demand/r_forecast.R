# Writes r_forecast.csv, the figures that forecast_test.cpp compares with: Rscript r_forecast.R > r_forecast.csv
# Needs the package forecast (Debian: r-cran-forecast 8.20). Series are written beside their figures.
suppressMessages(library(forecast))

set.seed(19)
lumpy <- function(n, chance, mean) ifelse(runif(n) < chance, 1 + rpois(n, mean), 0)
series <- list(
  example = c(0,0,3,0,0,0,2,0,5,0,0,1,0,0,0,0,4,0,2,0,0,0,3,0),
  seldom = lumpy(60, 0.15, 2),
  weekly = lumpy(104, 0.4, 3),
  often = lumpy(52, 0.9, 8),
  wide = 12.5 * lumpy(78, 0.3, 4),
  dying = c(lumpy(40, 0.5, 2), rep(0, 20)),
  growing = round(cumsum(lumpy(48, 0.5, 1)) / 4)
)
say <- function(...) cat(paste(..., sep = ","), "\n", sep = "")
number <- function(x) formatC(x, digits = 15, format = "g", width = 1)
say("name", "figure", "weight", "value", "series")
for (name in names(series)) {
  y <- series[[name]]
  all <- paste(y, collapse = " ")
  for (alpha in c(0.05, 0.1, 0.2, 0.35)) {
    say(name, "croston", alpha, number(as.numeric(croston(y, h = 1, alpha = alpha)$mean)), all)
    say(name, "ses", alpha, number(as.numeric(ses(ts(y), h = 1, alpha = alpha, initial = "simple")$mean)), all)
  }
  best <- ses(ts(y), h = 1, initial = "simple")
  say(name, "ses_sse", number(best$model$par["alpha"]), number(sum(best$residuals^2)), all)
}
