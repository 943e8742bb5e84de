# Reference figures of gauge studies: writes the data and, one line each, what R makes of them.
#   Rscript study.R           (R with the package lme4, Debian's r-cran-lme4)
# aiag.csv: AIAG, Measurement Systems Analysis, 4th edition, 10 parts x 3 appraisers x 3 trials. The others are made from it or drawn from a fixed seed.
suppressMessages(library(lme4))
control <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10, maxfun = 200000), calc.derivs = FALSE, check.conv.singular = "ignore")
a <- matrix(c(
  0.29,-0.56,1.34,0.47,-0.80,0.02,0.59,-0.31,2.26,-1.36, 0.41,-0.68,1.17,0.50,-0.92,-0.11,0.75,-0.20,1.99,-1.25, 0.64,-0.58,1.27,0.64,-0.84,-0.21,0.66,-0.17,2.01,-1.31,
  0.08,-0.47,1.19,0.01,-0.56,-0.20,0.47,-0.63,1.80,-1.68, 0.25,-1.22,0.94,1.03,-1.20,0.22,0.55,0.08,2.12,-1.62, 0.07,-0.68,1.34,0.20,-1.28,0.06,0.83,-0.34,2.19,-1.50,
  0.04,-1.38,0.88,0.14,-1.46,-0.29,0.02,-0.46,1.77,-1.49, -0.11,-1.13,1.09,0.20,-1.07,-0.67,0.01,-0.56,1.45,-1.77, -0.15,-0.96,0.67,0.11,-1.45,-0.49,0.21,-0.49,1.87,-2.16), ncol = 10, byrow = TRUE)
aiag <- data.frame(part = rep(1:10, 9), operator = rep(c("A", "B", "C"), each = 30), y = as.vector(t(a)))
missing <- aiag[-c(3, 14, 15, 22, 31, 47, 48, 49, 60, 71, 83, 84, 85, 86), ]
crossed <- local({
  set.seed(11)
  d <- expand.grid(part = 1:8, operator = LETTERS[1:4], again = 1:3)
  cell <- (d$part - 1) * 4 + as.integer(d$operator)
  d$y <- round(60 + rnorm(8, 0, 5)[d$part] + rnorm(4, 0, 1)[d$operator] + rnorm(32, 0, 1.2)[cell] + rnorm(nrow(d), 0, 0.6), 2)
  d <- d[-sample(nrow(d), 21), ]
  d[, c("part", "operator", "y")]
})
spoilt <- aiag; spoilt$y[c(17, 55)] <- spoilt$y[c(17, 55)] + c(1.4, -1.1)
digits <- function(x) paste(formatC(x, digits = 12, format = "g"), collapse = " ")
out <- file("study.txt", "w")
for (name in c("aiag", "missing", "crossed")) {
  d <- get(name); write.csv(d, paste0(name, ".csv"), row.names = FALSE, quote = FALSE)
  fit <- lmer(y ~ 1 + (1 | part) + (1 | operator) + (1 | part:operator), d, REML = TRUE, control = control)
  v <- as.data.frame(VarCorr(fit)); get1 <- function(g) v$vcov[v$grp == g]
  writeLines(paste("reml", name, digits(c(get1("Residual"), get1("operator"), get1("part:operator"), get1("part")))), out)
}
write.csv(spoilt, "spoilt.csv", row.names = FALSE, quote = FALSE)
t <- rstudent(lm(y ~ factor(part) + operator, spoilt)); i <- which.max(abs(t))
t2 <- rstudent(lm(y ~ factor(part) + operator, spoilt[-i, ])); j <- which.max(abs(t2))
writeLines(paste("rstudent", i, digits(t[i]), as.integer(rownames(spoilt[-i, ])[j]), digits(t2[j])), out)
w <- t.test(c(63.1, 62.4, 64.0, 63.3, 62.2), c(55.2, 54.1, 56.3, 55.0)); writeLines(paste("welch", digits(c(w$stderr, w$parameter))), out)
l <- summary(lm(Employed ~ ., longley)); writeLines(paste("longley", digits(l$coefficients[, 1])), out); writeLines(paste("longley-errors", digits(c(l$coefficients[, 2], l$sigma))), out)
write.csv(longley, "longley.csv", row.names = FALSE, quote = FALSE)
close(out)
