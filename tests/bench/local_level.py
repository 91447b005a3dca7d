# python3 local_level.py <folder>
#
# The second peer of local_level_bench: smooths the same series with statsmodels' KalmanSmoother, and fits the
# variances of the short one with UnobservedComponents; writes the levels, their variances and the seconds taken.
# Only the calls are timed, not the imports, the files, nor the making of the models. Each series has a model of its
# own (one that is bound again smooths the first series again), and nothing is asked for but levels and variances.
import math
import sys
import time
import warnings
from pathlib import Path

import numpy
import statsmodels
from statsmodels.tsa.statespace import kalman_smoother
from statsmodels.tsa.statespace.structural import UnobservedComponents

folder = Path(sys.argv[1])
noise, drift, start_mean, start_variance = (float(line) for line in (folder / "model.txt").read_text().split())


def read(name):
    for line in (folder / name).read_text().splitlines():
        yield numpy.array([math.nan if cell == "NA" else float(cell) for cell in line.split()])


def smoother():
    model = kalman_smoother.KalmanSmoother(
        k_endog=1, k_states=1,
        smoother_output=kalman_smoother.SMOOTHER_STATE | kalman_smoother.SMOOTHER_STATE_COV)
    model["design"] = numpy.ones((1, 1))
    model["transition"] = numpy.ones((1, 1))
    model["selection"] = numpy.ones((1, 1))
    model["obs_cov"] = numpy.full((1, 1), noise)
    model["state_cov"] = numpy.full((1, 1), drift)
    model.initialize_known(numpy.array([start_mean]), numpy.full((1, 1), start_variance))
    return model


def smoothed(name, runs):
    series = list(read(name))
    seconds = math.inf
    for _ in range(runs):
        levels = []
        models = [smoother() for _ in series]
        began = time.perf_counter()
        for model, y in zip(models, series):
            model.bind(y[:, None])
            found = model.smooth()
            levels.append((found.smoothed_state[0], found.smoothed_state_cov[0, 0]))
        seconds = min(seconds, time.perf_counter() - began)
    with open(folder / ("statsmodels_" + name), "w") as out:
        for level, variance in levels:
            out.write(" ".join(f"{each:.17g}" for each in level) + "\n")
            out.write(" ".join(f"{each:.17g}" for each in variance) + "\n")
    return seconds


def fitted(name, runs):
    flow = next(read(name))
    seconds = math.inf
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        for _ in range(runs):
            began = time.perf_counter()
            fit = UnobservedComponents(flow, "local level").fit(disp=False)
            seconds = min(seconds, time.perf_counter() - began)
    return seconds, fit.params[0], fit.params[1]


figures = [smoothed("many.txt", 2), smoothed("long.txt", 3), *fitted("fit.txt", 3)]
(folder / "statsmodels_figures.txt").write_text("".join(f"{each:.17g}\n" for each in figures))
print("statsmodels", statsmodels.__version__, "numpy", numpy.__version__, "Python", sys.version.split()[0])
