# lme4 on the readings of a file: seconds of the fit alone (best of three), criterion and variances.
suppressMessages(library(lme4))
d <- read.csv(commandArgs(TRUE)[1])
d$shop <- factor(d$shop); d$operator <- factor(d$operator)
best <- Inf
for (i in 1:3) {
  seconds <- system.time(fit <- suppressMessages(lmer(y ~ x + (x | shop) + (1 | operator), d, control = lmerControl(calc.derivs = FALSE))))[["elapsed"]]
  best <- min(best, seconds)
}
v <- VarCorr(fit)
cat(sprintf("%.3f %.4f %.5f %.5f %.6f %.5f\n", best, REMLcrit(fit), sigma(fit)^2, v$shop[1, 1], v$shop[2, 2], v$operator[1, 1]))
