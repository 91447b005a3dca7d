# Rscript judging.R <runs> <folder> [<runs> <folder> ...]
#
# The judging of courses and their smoothed curves in base R, written from docs/statistics/triggers.md, band.md,
# curve.md and docs/clinical/thresholds.md, to hold core/triggers and core/curves against (judging_bench). All
# courses are judged side by side: one loop over the days for what runs from day to day in every stream, one over
# the readings for what runs in hours, and everything else in one stroke over all entries. Smoothing is R's own
# KalmanSmooth; where a day has several entries, which it does not know, the joint normal law of the series.
#
# A folder holds streams.txt (symptom and side of each column), band.txt, movements.txt and, as doubles row by row,
# entries.bin (course, hours and calendar day since the treatment, scores) and baseline.bin (scores by course).

readBand <- function(folder) {
    p <- array(scan(file.path(folder, "band.txt"), quiet = TRUE), c(11, 29, 7))  # score, day, symptom
    move <- matrix(scan(file.path(folder, "movements.txt"), quiet = TRUE), ncol = 3, byrow = TRUE,
                   dimnames = list(NULL, c("noise", "drift", "start")))
    below <- apply(p, 2:3, cumsum)
    list(z = qnorm(pmin(pmax(below - p / 2, 0.0005), 0.9995)),
         high = apply(round(below, 12), 2:3, function(sum) which(sum >= 0.97)[1] - 1),  # 97th centile
         expected = apply(p, 2:3, function(p) sum(p * evenScale(0:10))),
         score = move[1:7, ], sides = move[8, ], sums = move[9, ])
}

evenScale <- function(points) 6 * log(6 + points)
within <- function(x, least, most) pmin(pmax(x, least), most)

readData <- function(folder) {
    streams <- matrix(scan(file.path(folder, "streams.txt"), quiet = TRUE), ncol = 2, byrow = TRUE)
    cells <- function(name, columns) {
        file <- file.path(folder, name)
        matrix(readBin(file, "double", file.size(file) / 8), ncol = columns, byrow = TRUE)
    }
    entries <- cells("entries.bin", 3 + nrow(streams))
    list(symptom = streams[, 1], side = streams[, 2], course = entries[, 1], hours = entries[, 2],
         day = pmax(0, entries[, 3]), scores = entries[, -(1:3)], baseline = cells("baseline.bin", nrow(streams)))
}

# z of scores (a row for each day of `day`, a column for each stream).
zOf <- function(band, symptom, scores, day) {
    z <- band$z[scores + 1 + 11 * pmin(day, 28) + rep(11 * 29 * (symptom - 1), each = nrow(scores))]
    dim(z) <- dim(scores)
    z
}

# The highest score of the day so far; rows in order of time, `cell` being the same through one day of a course.
highestSoFar <- function(scores, cell) {
    ordinal <- seq_along(cell) - match(cell, cell) + 1
    for (j in seq_len(max(ordinal))[-1]) {
        rows <- which(ordinal == j)
        scores[rows, ] <- pmax(scores[rows, ], scores[rows - 1, ], na.rm = TRUE)
    }
    scores
}

# Every statistic at every entry, NA where its guard in points does not hold; rows as in `data`.
judge <- function(data, band) {
    byTime <- order(data$course, data$hours)
    course <- data$course[byTime]
    hours <- pmax(0, data$hours[byTime])
    day <- cummax(data$day[byTime] + 1000 * course) - 1000 * course  # days do not run backwards
    now <- data$scores[byTime, , drop = FALSE]
    symptom <- data$symptom
    courses <- nrow(data$baseline)
    streams <- length(symptom)
    days <- max(day) + 1

    cell <- course + courses * day
    high <- highestSoFar(now, cell)
    last <- which(!duplicated(cell, fromLast = TRUE))
    daily <- matrix(NA_real_, courses * days, streams)
    daily[cell[last], ] <- high[last, ]
    places <- outer(course + courses * streams * day, courses * (seq_len(streams) - 1), "+")
    before <- lapply(dayByDay(daily, band, symptom, courses, days), function(x) {
        x <- x[places]
        dim(x) <- dim(high)
        x
    })

    # One stream: what stood before today, and today's highest score.
    each <- function(x) rep(x, each = nrow(high))
    asked <- !is.na(now)
    answered <- !is.na(high)
    z <- zOf(band, symptom, high, day)
    total <- before$variance + each(band$score[symptom, "noise"])
    gap <- z - before$mean
    level <- before$mean + before$variance / total * gap
    rebound <- (day >= 2) * pmax(before$rebound + within(gap / sqrt(total), -3, 3) - 0.5, 0)
    usualHigh <- band$high[outer(pmin(day, 28) + 1, 29 * (symptom - 1), "+")]
    beyond <- function(points) 0.25 * pmax(points - usualHigh, 0)
    three <- pmin(before$seen, 2) + 1
    lastThree <- (z + before$z1 + before$z2) / three
    lastPoints <- (high + before$points1 + before$points2) / three
    slow <- lastThree - 0.5 * before$early + beyond(lastPoints)
    peak <- pmax(before$peak, high, na.rm = TRUE)
    risen <- asked & before$seen > 0 & high - before$lowest >= 2

    # All streams that heal, as they were last answered, up to four days ago.
    fresh <- each(symptom <= 4) & (answered | day - before$day <= 4)
    long <- fresh & day >= 8 & before$seen + answered >= 3
    lastLevel <- ifelse(answered, level, before$mean)
    lastScore <- ifelse(answered, high, before$points1)
    lastThree <- ifelse(answered, lastThree, (before$z1 + before$z2 + before$z3) / 3)
    longPoints <- ifelse(answered, lastPoints, (before$points1 + before$points2 + before$points3) / 3)
    sumOf <- function(x, which) {
        x[!which] <- 0
        rowSums(x) / (rowSums(which) + 1)
    }
    levelOverall <- sumOf(lastLevel, fresh)
    slowOverall <- sumOf(lastThree - 0.55 * before$early, long)

    where <- function(x, holds) {
        x[!holds] <- NA
        x
    }
    out <- cbind(where(level + beyond(high), asked & high >= 3),
                 where(rebound, day >= 3 & risen),
                 where(slow, asked & day >= 8 & before$seen >= 2 & peak >= 3 & lastPoints >= 2),
                 where(levelOverall, rowSums(fresh & lastScore >= 3) > 0),
                 where(slowOverall, rowSums(long & peak >= 3 & longPoints >= 2) > 0),
                 sidesApart(data, now, high, daily, course, day, courses, days),
                 where(oneSide(data, band, now, course, hours, day), sidesSay(data, now, day, risen)))
    out[byTime, ] <- out
    out
}

# Where one side stands far enough above the other: filling left and right, worsening left and right.
sidesSay <- function(data, now, day, risen) {
    column <- function(symptoms, side) match(paste(symptoms, side), paste(data$symptom, data$side))
    lead <- now[, column(1:4, 1), drop = FALSE] - now[, column(1:4, 2), drop = FALSE]
    lead[is.na(lead)] <- 0
    says <- function(side) {
        ahead <- if (side == 1) lead else -lead
        fills <- day <= 4 & rowSums(ahead) >= 5 & (rowSums(ahead >= 3) > 0 | rowSums(ahead >= 2) >= 2)
        inflamed <- c(1, 2, 4)  # pain, swelling, tightness
        behind <- rowSums(ahead[, inflamed, drop = FALSE]) >= 4 & rowSums(ahead[, inflamed, drop = FALSE] >= 2) > 0
        rises <- rowSums(risen[, column(inflamed, side), drop = FALSE]) > 0
        list(fills, day >= 3 & (rises | behind))
    }
    left <- says(1)
    right <- says(2)
    cbind(left[[1]], right[[1]], left[[2]], right[[2]])
}

# What stands in each stream before each day: a matrix of (course, stream) by day for each quantity.
dayByDay <- function(daily, band, symptom, courses, days) {
    streams <- length(symptom)
    shape <- function(x) {  # (course, day) by stream, to (course, stream) by day
        x <- aperm(array(x, c(courses, days, streams)), c(1, 3, 2))
        dim(x) <- c(courses * streams, days)
        x
    }
    z <- shape(zOf(band, symptom, daily, rep(0:(days - 1), each = courses)))
    daily <- shape(daily)
    noise <- rep(band$score[symptom, "noise"], each = courses)
    drift <- rep(band$score[symptom, "drift"], each = courses)
    zero <- numeric(courses * streams)
    state <- list(mean = zero, variance = rep(band$score[symptom, "start"], each = courses), rebound = zero,
                  seen = zero, day = zero - Inf, z1 = zero, z2 = zero, z3 = zero, points1 = zero, points2 = zero,
                  points3 = zero, early = zero, lowest = zero + 10, peak = zero)
    earlyDays <- zero
    kept <- lapply(state, function(x) matrix(0, courses * streams, days))
    for (t in seq_len(days)) {
        if (t > 1)
            state$variance <- state$variance + drift
        for (name in names(state))
            kept[[name]][, t] <- state[[name]]
        i <- which(!is.na(z[, t]))
        if (length(i) == 0)
            next
        today <- z[i, t]
        gap <- today - state$mean[i]
        total <- state$variance[i] + noise[i]
        gain <- state$variance[i] / total
        state$mean[i] <- state$mean[i] + gain * gap
        state$variance[i] <- state$variance[i] * (1 - gain)
        if (t > 2)
            state$rebound[i] <- pmax(0, state$rebound[i] + within(gap / sqrt(total), -3, 3) - 0.5)
        if (t >= 2 && t <= 5) {
            state$early[i] <- (state$early[i] * earlyDays[i] + today) / (earlyDays[i] + 1)
            earlyDays[i] <- earlyDays[i] + 1
        }
        state$z3[i] <- state$z2[i]
        state$z2[i] <- state$z1[i]
        state$z1[i] <- today
        state$points3[i] <- state$points2[i]
        state$points2[i] <- state$points1[i]
        state$points1[i] <- daily[i, t]
        state$lowest[i] <- pmin(state$lowest[i], daily[i, t])
        state$peak[i] <- pmax(state$peak[i], daily[i, t])
        state$seen[i] <- state$seen[i] + 1
        state$day[i] <- t - 1
    }
    kept
}

# Side divergence of each of the seven symptoms, left positive, where the sides are 3 points apart.
sidesApart <- function(data, now, high, daily, course, day, courses, days) {
    apart <- matrix(NA_real_, nrow(high), 7)
    difference <- function(l, r) (l - r) / (0.5 + 0.2 * (l + r) / 2)
    for (s in 1:7) {
        l <- which(data$symptom == s & data$side == 1)
        r <- which(data$symptom == s & data$side == 2)
        if (length(l) == 0 || length(r) == 0)
            next
        average <- 0.3 * difference(data$baseline[, l], data$baseline[, r])
        average[is.na(average)] <- 0
        each <- matrix(difference(daily[, l], daily[, r]), courses, days)
        before <- matrix(0, courses, days)
        for (t in seq_len(days)) {
            before[, t] <- average
            i <- which(!is.na(each[, t]))
            average[i] <- 0.7 * average[i] + 0.3 * each[i, t]
        }
        says <- !is.na(now[, l]) | !is.na(now[, r])
        value <- 0.7 * before[cbind(course, day + 1)] + 0.3 * difference(high[, l], high[, r])
        says <- says & abs(high[, l] - high[, r]) >= 3 & (high[, l] > high[, r]) == (value > 0)
        apart[, s] <- ifelse(says, value, NA)
    }
    apart
}

# Points of the smoothed level and of its 80 % interval: (course, stream), day, (points, low, high).
smoothed <- function(data, band) {
    symptom <- data$symptom
    streams <- length(symptom)
    courses <- nrow(data$baseline)
    days <- max(data$day) + 1
    z <- zOf(band, symptom, data$scores, data$day)
    cell <- data$course + courses * data$day
    place <- sort(unique(cell))
    byDay <- function(x) {  # sums of a day's entries, (course, stream) by day
        all <- matrix(0, courses * days, streams)
        all[place, ] <- rowsum(x, cell)
        all <- aperm(array(all, c(courses, days, streams)), c(1, 3, 2))
        dim(all) <- c(courses * streams, days)
        all
    }
    answered <- !is.na(z)
    z[!answered] <- 0
    count <- byDay(answered + 0)
    y <- t(byDay(z) / count)
    count <- t(count)
    models <- lapply(symptom, function(s) {
        m <- band$score[s, ]
        list(T = matrix(1), V = matrix(m[["drift"]]), h = m[["noise"]], Z = 1, a = 0, P = matrix(m[["start"]]),
             Pn = matrix(m[["start"]]))
    })
    level <- variance <- matrix(NA_real_, days, courses * streams)
    for (i in which(colSums(count) > 0)) {
        seen <- which(count[, i] > 0)
        span <- seen[1]:seen[length(seen)]
        model <- models[[(i - 1) %/% courses + 1]]
        if (max(count[, i]) == 1) {
            fit <- KalmanSmooth(y[span, i], model, nit = 0L)
            level[span, i] <- fit$smooth
            variance[span, i] <- fit$var
        } else {
            together <- drop(model$Pn) + drop(model$V) * (outer(span, span, pmin) - span[1])
            at <- match(seen, span)
            known <- together[at, , drop = FALSE]
            gain <- solve(known[, at] + diag(model$h / count[seen, i], length(at)), known)
            level[span, i] <- y[seen, i] %*% gain
            variance[span, i] <- diag(together) - colSums(gain * known)
        }
    }
    points <- array(NA_real_, c(courses * streams, days, 3))
    reach <- qnorm(0.9) * sqrt(variance)
    for (t in seq_len(days))
        for (s in seq_len(streams)) {
            i <- (s - 1) * courses + seq_len(courses)
            x <- c(level[t, i], level[t, i] - reach[t, i], level[t, i] + reach[t, i])
            points[i, t, ] <- approx(band$z[, min(t, 29), symptom[s]], 0:10, x, rule = 2, ties = "ordered")$y
        }
    points
}

# Processor seconds of the best run.
fastest <- function(work, runs) {
    seconds <- Inf
    for (run in seq_len(runs)) {
        gc(FALSE)
        seconds <- min(seconds, sum(system.time(work())[c("user.self", "sys.self")]))
    }
    seconds
}

# One course by itself, as it comes to a program that judges when an entry arrives.
only <- function(data, course) {
    rows <- data$course == course
    list(symptom = data$symptom, side = data$side, course = rep(1, sum(rows)), hours = data$hours[rows],
         day = data$day[rows], scores = data$scores[rows, , drop = FALSE],
         baseline = data$baseline[course, , drop = FALSE])
}

source(file.path(dirname(sub("--file=", "", grep("--file=", commandArgs(), value = TRUE))), "judging_one_side.R"))
arguments <- commandArgs(trailingOnly = TRUE)
for (i in seq(1, length(arguments), 2)) {
    runs <- as.integer(arguments[i])  # the fastest of so many is told
    folder <- arguments[i + 1]
    data <- readData(folder)
    band <- readBand(folder)
    statistics <- curves <- NULL
    judging <- fastest(function() statistics <<- judge(data, band), runs)
    smoothing <- fastest(function() curves <<- smoothed(data, band), runs)
    writeBin(as.vector(statistics), file.path(folder, "r_statistics.bin"))
    writeBin(as.vector(curves), file.path(folder, "r_smoothed.bin"))
    each <- lapply(head(unique(data$course), 20), function(course) only(data, course))
    alone <- fastest(function() for (one in each) { judge(one, band); smoothed(one, band) }, runs) / length(each)
    writeLines(sprintf("%.17g", c(judging, smoothing, alone)), file.path(folder, "r_seconds.txt"))
}
cat(R.version.string, "\n")
