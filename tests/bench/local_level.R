# Rscript local_level.R <folder>
#
# Reads the series that local_level_bench has written, smooths them with R's KalmanSmooth and fits the
# variances of each long one with StructTS; writes the levels, their variances and the seconds taken.
# Only the calls are timed, not the start of R nor the files.
folder <- commandArgs(trailingOnly = TRUE)[1]
model <- scan(file.path(folder, "model.txt"), quiet = TRUE)
modelOf <- function() list(T = matrix(1), V = matrix(model[2]), h = model[1], Z = 1, a = model[3],
                           P = matrix(model[4]), Pn = matrix(model[4]))
smoothed <- function(name) {
    series <- lapply(strsplit(readLines(file.path(folder, name)), " "),
                     function(cells) as.numeric(ifelse(cells == "NA", NA, cells)))
    mod <- modelOf()
    seconds <- Inf
    for (run in 1:3) {
        time <- system.time(levels <- lapply(series, function(y) KalmanSmooth(y, mod, nit = 0L)))
        seconds <- min(seconds, time[["elapsed"]])
    }
    out <- file(file.path(folder, paste0("R_", name)), "w")
    for (level in levels) {
        writeLines(paste(sprintf("%.17g", level$smooth), collapse = " "), out)
        writeLines(paste(sprintf("%.17g", level$var), collapse = " "), out)
    }
    close(out)
    seconds
}
many <- smoothed("many.txt")
long <- smoothed("long.txt")
y <- as.numeric(strsplit(readLines(file.path(folder, "fit.txt")), " ")[[1]])
time <- system.time(for (run in 1:20) fit <- StructTS(ts(y), "level"))
writeLines(sprintf("%.17g", c(many, long, time[["elapsed"]] / 20, fit$coef[["epsilon"]], fit$coef[["level"]])),
           file.path(folder, "R_figures.txt"))
cat(R.version.string, "\n")
