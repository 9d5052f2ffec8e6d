# Writes r_outlook.csv, the figures that r_outlook_test.cpp compares with: Rscript r_outlook.R > r_outlook.csv
# Plain R. Means of Dirichlet shares are integrals over their Beta marginals, the rate is one over a Gamma, chances of the
# next line are ratios of Gamma functions: no formula is shared with the program. Orders are written beside the figures.
set.seed(23)
listed <- c(20, 30, 50, 85)
odd <- 27.123
guess <- 100
orders <- 60
day <- cumsum(rexp(orders, 0.2))
width <- sample(c(listed, odd), orders, replace = TRUE, prob = c(.3, .2, .2, .15, .15))
width[41:60] <- sample(c(85, odd), 20, replace = TRUE, prob = c(.8, .2)) # the mix swings
quantity <- sample(1:5, orders, replace = TRUE, prob = c(.4, .3, .1, .1, .1))

mean_beta <- function(a, b) integrate(function(x) x * dbeta(x, a, b), 0, 1, rel.tol = 1e-9)$value
mean_gamma <- function(shape, rate)
  integrate(function(x) x * dgamma(x, shape, rate), 0, 40 * shape / rate, rel.tol = 1e-9, subdivisions = 1000)$value
next_chance <- function(a, all) exp(lgamma(a + 1) - lgamma(a) + lgamma(all) - lgamma(all + 1))
say <- function(...) cat(paste(..., sep = ","), "\n", sep = "")
number <- function(x) formatC(x, digits = 12, format = "g", width = 1)

keeps <- c(1, 0.985, 0.94)
trust <- c(.6, .3, .1)
counts <- matrix(0, 3, length(listed))
lines <- c(0, 0, 0)
quantities <- 6 * c(.55, .22, .08, .09, .06)
rate_orders <- 0
rate_years <- 0
before <- 0
prior <- 6 * 0.85 / length(listed)
say("orders", "figure", "of", "value", "day", "width", "quantity")
for (i in seq_len(orders)) {
  rate_orders <- rate_orders * 0.99 + 1
  rate_years <- rate_years * 0.99 + (day[i] - before) / 300
  before <- day[i]
  at <- match(width[i], listed)
  luck <- sapply(1:3, function(m) {
    all <- 6 + lines[m]
    each <- sapply(counts[m, ], function(n) next_chance(prior + n, all))
    if (is.na(at)) 1 - sum(each) else each[at]
  })
  trust <- trust * luck / sum(trust * luck) * 0.99 + 0.01 / 3
  counts <- counts * keeps
  lines <- lines * keeps + 1
  if (!is.na(at)) counts[, at] <- counts[, at] + 1
  quantities <- quantities * 0.998
  quantities[quantity[i]] <- quantities[quantity[i]] + 1
  order <- c(number(day[i]), number(1000 * width[i]), quantity[i])
  say(i, "rate", 0, number(mean_gamma(rate_orders + 2, rate_years + 2 / guess)), order[1], order[2], order[3])
  if (i %% 10 == 0) {
    for (l in seq_along(listed)) {
      share <- sum(sapply(1:3, function(m) {
        a <- prior + counts[m, l]
        trust[m] * mean_beta(a, 6 + lines[m] - a)
      }))
      say(i, "width", 1000 * listed[l], number(share), "", "", "")
    }
    # Both prior and counts are forgotten here, line by line.
    for (q in 1:5)
      say(i, "quantity", q, number(mean_beta(quantities[q], sum(quantities) - quantities[q])), "", "", "")
  }
}
