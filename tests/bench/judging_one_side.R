# Part of judging.R: the evidence that one side has begun to go its own way, in hours, as docs/statistics/triggers.md
# has it under "One side". The readings of all courses are taken in side by side.

# The logarithms of the likelihood ratios: filling left and right, worsening left and right.
oneSide <- function(data, band, now, course, hours, day) {
    both <- c(2, 1, 4, 3)  # swelling, pain, tightness, bruising
    column <- function(side) match(paste(both, side), paste(data$symptom, data$side))
    left <- function(scores) evenScale(scores[, column(1), drop = FALSE])
    right <- function(scores) evenScale(scores[, column(2), drop = FALSE])
    first <- left(data$baseline) - right(data$baseline)
    has <- which(rowSums(!is.na(first)) > 0)
    difference <- left(now) - right(now)
    says <- which(rowSums(!is.na(difference)) > 0)
    usual <- band$expected[pmin(day[says], 28) + 1, both, drop = FALSE]
    sum <- (left(now) + right(now))[says, , drop = FALSE] - 2 * usual

    # Readings of a course one after the other, the practitioner's first; `row` is the entry, 0 the practitioner's.
    value <- rbind(cbind(first[has, , drop = FALSE], matrix(NA, length(has), 4)),
                   cbind(difference[says, , drop = FALSE], sum))
    row <- c(rep(0, length(has)), says)
    who <- c(has, course[says])
    when <- c(rep(0, length(has)), hours[says])
    days <- c(rep(0, length(has)), day[says])
    inOrder <- order(who)  # stable: the rest is in order of time
    ordinal <- integer(length(who))
    ordinal[inOrder] <- seq_along(who) - match(who[inOrder], who[inOrder]) + 1

    n <- nrow(data$baseline)
    eight <- function(x) rep(x, each = n)
    movement <- function(name) eight(rep(c(band$sides[[name]], band$sums[[name]]), each = 4))
    noise <- movement("noise")
    drift <- movement("drift") / 24
    zeros <- matrix(0, n, 8)
    signatures <- list(fills = list(weight = c(1, 0.8, 0.65, 0.4), least = 1.2, most = 2.6, days = 0, until = 4),
                       worsens = list(weight = c(0.85, 1, 0.5, 0), least = 0.5, most = 1.0, days = 4, until = Inf))
    share <- cbind(differences = rep(c(1, 0), each = 4), sums = rep(c(0, 0.6), each = 4))
    # No beginning yet: whatever would speak for it is divided by infinity.
    none <- list(hours = numeric(n), unrest = rep(Inf, n), agree = zeros %*% share, strength = numeric(n), absorbed = zeros)
    state <- list(mean = zeros, variance = matrix(movement("start"), n), hours = zeros, last = numeric(n),
                  squares = numeric(n), surprises = numeric(n),
                  begun = lapply(signatures, function(signature) rep(list(none), 8)))
    before <- state
    heard <- rep(-Inf, n)  # when the patient's last reading came, replaced or not; nothing replaces the practitioner's
    out <- matrix(NA_real_, nrow(now), 4)
    for (k in seq_len(max(ordinal))) {
        reading <- which(ordinal == k)
        v <- matrix(NA_real_, n, 8)
        v[who[reading], ] <- value[reading, ]
        h <- rep(NA_real_, n)
        h[who[reading]] <- when[reading]
        again <- which(h - heard < 3)
        if (length(again) > 0)
            state <- takeBack(state, before, again)
        before <- state
        heard <- h
        heard[who[reading[row[reading] == 0]]] <- -Inf

        seen <- !is.na(v)
        predicted <- state$variance + drift * (h - state$hours)
        total <- predicted + noise
        gain <- predicted / total
        precision <- 1 / sqrt(total)
        gap <- v - state$mean
        gain[!seen] <- precision[!seen] <- gap[!seen] <- 0
        surprise <- within(gap * precision, -3.5, 3.5)
        unrest <- pmax(1, (12 + state$squares) / (12 + state$surprises))
        for (name in names(signatures)) {
            signature <- signatures[[name]]
            if (min(days[reading]) > signature$until)
                next
            begun <- c(list(none), state$begun[[name]][1:7])
            begun[[1]]$hours <- state$last
            begun[[1]]$unrest <- unrest
            best <- matrix(0, n, 2)
            for (b in seq_len(min(k, 8))) {
                one <- begun[[b]]
                size <- if (signature$days > 0) pmin((h - one$hours) / 24, signature$days) else rep(1, n)
                ahead <- size %o% rep(signature$weight, 2) - one$absorbed
                r <- ahead * precision
                one$agree <- one$agree + (r * surprise) %*% share
                one$strength <- one$strength + drop(r^2 %*% rowSums(share))
                one$absorbed <- one$absorbed + gain * ahead
                agreement <- one$agree[, "sums"] + one$agree[, "differences"] %o% c(1, -1)
                size <- within(agreement / one$strength, signature$least, signature$most)
                ratio <- (size * agreement - size^2 * one$strength / 2) / one$unrest
                best <- pmax(best, ratio, na.rm = TRUE)
                begun[[b]] <- one
            }
            state$begun[[name]] <- begun
            entry <- reading[row[reading] > 0 & days[reading] <= signature$until]
            out[row[entry], if (name == "fills") 1:2 else 3:4] <- best[who[entry], ]
        }
        state$mean <- state$mean + gain * gap
        state$variance[seen] <- (predicted * (1 - gain))[seen]
        state$hours[seen] <- (zeros + h)[seen]
        state$last <- h
        state$squares <- state$squares + drop(pmin(surprise^2, 9) %*% share[, "differences"])
        state$surprises <- state$surprises + drop(seen %*% share[, "differences"])
    }
    out
}

# These courses as they were before their last reading.
takeBack <- function(state, before, rows) {
    if (is.list(state))
        return(Map(takeBack, state, before, MoreArgs = list(rows = rows)))
    if (is.matrix(state))
        state[rows, ] <- before[rows, ]
    else
        state[rows] <- before[rows]
    state
}
