# Reference fits of linear mixed models: writes the data and, one line each, what lme4 makes of them.
#   Rscript lme4.R            (R with the package lme4, Debian's r-cran-lme4)
# Every data set is made here from a fixed seed; nothing in it was measured.
suppressMessages(library(lme4))
control <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10, maxfun = 200000), calc.derivs = FALSE)

make <- function(seed, shops, operators, emulsions, rows, sd) {
  set.seed(seed)
  shop <- sample(shops, rows, TRUE)
  operator <- (shop - 1) * operators + sample(operators, rows, TRUE)
  emulsion <- sample(emulsions, rows, TRUE)
  x <- round(runif(rows, 2, 25), 3)
  height <- rnorm(shops, 0, sd[1]); slope <- rnorm(shops, 0, sd[2]); hand <- rnorm(shops * operators, 0, sd[3]); kind <- rnorm(emulsions, 0, sd[4])
  weight <- sample(c(1, 2, 5), rows, TRUE)
  y <- 1.5 + 0.9 * x + height[shop] + slope[shop] * x + hand[operator] + kind[emulsion] + rnorm(rows, 0, sd[5]) / sqrt(weight)
  data.frame(y = round(y, 4), x, shop, operator, emulsion, weight)
}

balanced <- local({
  set.seed(1)
  d <- expand.grid(x = c(4, 8, 12, 16, 20), shop = 1:12)
  d$y <- round(2 + 0.8 * d$x + rnorm(12, 0, 3)[d$shop] + rnorm(12, 0, 0.2)[d$shop] * d$x + rnorm(nrow(d), 0, 1.2), 4)
  data.frame(y = d$y, x = d$x, shop = d$shop, operator = d$shop, emulsion = 1, weight = 1)
})

cases <- list(
  balanced = list(data = balanced, formula = y ~ x + (x | shop), weights = FALSE),
  nested = list(data = make(2, 25, 4, 6, 220, c(2, 0.1, 1, 0.8, 1)), formula = y ~ x + (x | shop) + (1 | operator), weights = FALSE),
  crossed = list(data = make(3, 18, 3, 7, 260, c(2, 0, 1, 1.2, 1)), formula = y ~ x + (1 | shop) + (1 | operator) + (1 | emulsion), weights = FALSE),
  weighted = list(data = make(4, 15, 3, 5, 150, c(2, 0, 0.7, 1, 1.5)), formula = y ~ x + (1 | shop) + (1 | operator) + (1 | emulsion), weights = TRUE),
  slopes = list(data = make(5, 20, 3, 5, 300, c(1.5, 0.15, 0.6, 0.7, 1)), formula = y ~ x + (0 + x | shop) + (0 + x | operator) + (0 + x | emulsion), weights = FALSE),
  singular = list(data = make(6, 14, 3, 5, 120, c(1.5, 0, 0, 0, 2)), formula = y ~ x + (1 | shop) + (1 | operator) + (1 | emulsion), weights = FALSE),
  few = list(data = make(7, 4, 2, 3, 22, c(2, 0.1, 1, 0.5, 1)), formula = y ~ x + (1 | shop) + (1 | operator), weights = FALSE)
)

out <- file("lme4.txt", "w")
for (name in names(cases)) {
  case <- cases[[name]]
  write.csv(case$data, paste0(name, ".csv"), row.names = FALSE, quote = FALSE)
  fit <- suppressWarnings(suppressMessages(if (case$weights)
    lmer(case$formula, case$data, weights = weight, control = control) else lmer(case$formula, case$data, control = control)))
  say <- function(what, value) cat(name, what, format(value, digits = 12), "\n", file = out)
  say("criterion", REMLcrit(fit))
  say("residual", sigma(fit)^2)
  for (i in seq_along(fixef(fit))) { say(paste0("fixed", i), fixef(fit)[[i]]); say(paste0("error", i), sqrt(vcov(fit)[i, i])) }
  for (term in names(VarCorr(fit))) {
    v <- VarCorr(fit)[[term]]
    for (i in seq_len(nrow(v))) for (j in seq_len(i)) say(paste0(term, i, j), v[i, j])
    u <- ranef(fit)[[term]]
    for (j in seq_len(ncol(u))) say(paste0(term, "-first", j), u[1, j])
  }
}
close(out)
