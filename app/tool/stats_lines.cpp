// ebbline stats theilsen, line, medianline, levelling: a line, a plane or a curve through points.

#include "app/tool/stats_parts.h"

#include "core/statistics/least_squares.h"
#include "core/statistics/median_regression.h"
#include "core/statistics/theil_sen.h"

namespace ebbline::tool {

namespace {

struct LineOptions {
    PointColumns columns;
};

struct PlaneOptions {
    std::string file;
    std::vector<std::string> x{"x"};
    std::string y = "y";
};

struct LevellingOptions {
    PointColumns columns;
    double top = 0;
    double rate = 0;
};

Answered theilSen(const LineOptions& options)
{
    const auto points = pointsIn(options.columns);
    if (!points)
        return std::unexpected(points.error());
    const auto line = statistics::theilSen(points->values);
    if (!line)
        return refused(line.error());
    return Answer{{{"points", points->values.size()}, {"missing", points->missing}, {"slope", line->slope},
                   {"intercept", line->intercept}},
                  std::to_string(points->values.size()) + " points: slope " + shown(line->slope) + ", intercept "
                      + shown(line->intercept) + "\nno limits are given; holds up to 29 % wild points\n"
                      + missingText(points->missing)};
}

Answered straightLine(const LineOptions& options)
{
    const auto points = pointsIn(options.columns);
    if (!points)
        return std::unexpected(points.error());
    const auto line = statistics::leastSquares(points->values);
    if (!line)
        return refused(line.error());
    return Answer{{{"points", points->values.size()}, {"missing", points->missing}, {"slope", line->slope},
                   {"slopeError", line->slopeError}, {"intercept", line->intercept}, {"interceptError", line->interceptError},
                   {"residualDeviation", line->residualDeviation}, {"determination", line->determination}},
                  std::to_string(points->values.size()) + " points: slope " + shown(line->slope, 6) + ", standard error "
                      + shown(line->slopeError, 6) + "\nintercept " + shown(line->intercept, 6) + ", standard error "
                      + shown(line->interceptError, 6) + "\ndeviation of the points around the line "
                      + shown(line->residualDeviation, 6) + "\n" + missingText(points->missing)};
}

Answered medianLine(const PlaneOptions& options)
{
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    std::vector<std::vector<std::optional<double>>> columns;
    columns.reserve(options.x.size() + 1);
    for (const std::string& name : options.x)
        columns.push_back(table->numbers(name, anyNumberOrNone));
    columns.push_back(table->numbers(options.y, anyNumberOrNone));
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    std::vector<std::vector<double>> rows;
    std::vector<double> values;
    for (std::size_t row = 0; row < table->rowCount(); ++row) {
        std::vector<double> cells;
        for (const auto& column : columns)
            if (column[row])
                cells.push_back(*column[row]);
        if (cells.size() < columns.size())
            continue;
        values.push_back(cells.back());
        cells.pop_back();
        rows.push_back(std::move(cells));
    }
    const std::size_t missing = table->rowCount() - rows.size();
    const auto plane = statistics::medianRegression(rows, values);
    if (!plane)
        return refused(plane.error());
    Answer answer{{{"rows", rows.size()}, {"missing", missing}, {"constant", plane->front()}, {"coefficients", Json::object()}},
                  "median of " + options.y + " = " + shown(plane->front())};
    for (std::size_t i = 0; i < options.x.size(); ++i) {
        answer.json["coefficients"][options.x[i]] = (*plane)[i + 1];
        answer.text += " + " + shown((*plane)[i + 1]) + " " + options.x[i];
    }
    answer.text += "\n" + missingText(missing);
    return answer;
}

Answered levelling(const LevellingOptions& options)
{
    const auto points = pointsIn(options.columns);
    if (!points)
        return std::unexpected(points.error());
    const auto curve = statistics::fitLevellingOff(points->values, options.top, options.rate);
    if (!curve)
        return refused(curve.error());
    return Answer{{{"points", points->values.size()}, {"missing", points->missing}, {"top", curve->top}, {"topError", curve->topError},
                   {"rate", curve->rate}, {"rateError", curve->rateError}, {"squares", curve->squares},
                   {"residualDeviation", curve->residualDeviation}},
                  std::to_string(points->values.size()) + " points: top " + shown(curve->top) + ", standard error "
                      + shown(curve->topError) + "\nrate " + shown(curve->rate, 8) + ", standard error " + shown(curve->rateError, 8)
                      + "\ndeviation of the points around the curve " + shown(curve->residualDeviation) + "\n"
                      + missingText(points->missing)};
}

}  // namespace

void addLineMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto robust = std::make_shared<LineOptions>();
    auto* command = addMethod(stats, run, "theilsen", "Straight line that single wild points do not move", robust, theilSen);
    command->footer("The median slope of all pairs (Theil 1950; Sen, J Am Stat Assoc 1968;63:1379). One of these seven is wild; all\n"
                    "others lie on y = x, hence the answer by hand.\n"
                    "Example: points.csv holds the lines  x,y  1,1  2,2  3,3  4,4  5,5  6,16  7,7\n"
                    "  ebbline stats theilsen points.csv\n"
                    "  7 points: slope 1.0000, intercept 0.0000\n"
                    "  no limits are given; holds up to 29 % wild points");
    addPointColumns(*command, robust->columns);

    const auto line = std::make_shared<LineOptions>();
    command = addMethod(stats, run, "line", "Straight line by least squares", line, straightLine);
    command->footer("NIST StRD, Norris: slope 1.00211681802045, intercept -0.262323073774029.\n"
                    "Example: norris.csv holds the lines  x,y  0.2,0.1  337.4,338.8  118.2,118.1  884.6,888  10.1,9.2  226.5,228.1\n"
                    "  666.3,668.5  996.3,998.5  448.6,449.1  777,778.9  558.2,559.2  0.4,0.3  0.6,0.1  775.5,778.1  666.9,668.8\n"
                    "  338,339.3  447.5,448.9  11.6,10.8  556,557.7  228.1,228.3  995.8,998  887.6,888.8  120.2,119.6  0.3,0.3\n"
                    "  0.3,0.6  556.8,557.6  339.1,339.3  887.2,888  999,998.5  779,778.9  11.1,10.2  118.3,117.6  229.2,228.9\n"
                    "  669.1,668.4  448.9,449.2  0.5,0.2\n"
                    "  ebbline stats line norris.csv\n"
                    "  36 points: slope 1.002117, standard error 0.000430\n"
                    "  intercept -0.262323, standard error 0.232818\n"
                    "  deviation of the points around the line 0.884796");
    addPointColumns(*command, line->columns);

    const auto plane = std::make_shared<PlaneOptions>();
    command = addMethod(stats, run, "medianline", "Median of y given one x or several", plane, medianLine);
    command->footer("Stack loss (Koenker and Bassett, Econometrica 1978;46:33).\n"
                    "Example: stack.csv holds the lines  air,water,acid,loss  80,27,89,42  80,27,88,37  75,25,90,37  62,24,87,28\n"
                    "  62,22,87,18  62,23,87,18  62,24,93,19  62,24,93,20  58,23,87,15  58,18,80,14  58,18,89,14  58,17,88,13\n"
                    "  58,18,82,11  58,19,93,12  50,18,89,8  50,18,86,7  50,19,72,8  50,19,79,8  50,20,80,9  56,20,82,15  70,20,91,15\n"
                    "  ebbline stats medianline stack.csv --x air,water,acid --y loss\n"
                    "  median of loss = -39.6899 + 0.8319 air + 0.5739 water + -0.0609 acid");
    command->add_option("FILE", plane->file, "Table (CSV), one row a point")->required();
    command->add_option("--x", plane->x, "Its columns of x")->delimiter(',')->capture_default_str();
    command->add_option("--y", plane->y, "Its column of y")->capture_default_str();

    const auto curve = std::make_shared<LevellingOptions>();
    command = addMethod(stats, run, "levelling", "Curve that levels off: top (1 - exp(-rate x))", curve, levelling);
    command->footer("NIST StRD, Misra1a: top 238.94212918, rate 5.5015643181e-4.\n"
                    "Example: misra.csv holds the lines  x,y  77.6,10.07  114.9,14.73  141.1,17.94  190.8,23.93  239.9,29.61  289,35.18\n"
                    "  332.8,40.02  378.4,44.82  434.8,50.76  477.3,55.05  536.8,61.01  593.1,66.4  689.1,75.47  760,81.78\n"
                    "  ebbline stats levelling misra.csv --top 250 --rate 5e-4\n"
                    "  14 points: top 238.9421, standard error 2.7070\n"
                    "  rate 0.00055016, standard error 0.00000727\n"
                    "  deviation of the points around the curve 0.1019");
    addPointColumns(*command, curve->columns);
    command->add_option("--top", curve->top, "First guess of the top, above 0")->required();
    command->add_option("--rate", curve->rate, "First guess of the rate, above 0")->required();
}

}  // namespace ebbline::tool
