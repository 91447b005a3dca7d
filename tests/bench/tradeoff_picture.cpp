#include "tests/bench/tradeoff_picture.h"

#include <array>
#include <sstream>

namespace ebbline::bench {

namespace {

constexpr double left = 60;
constexpr double top = 20;
constexpr double width = 480;
constexpr double height = 360;
constexpr double mostBudget = 20;
constexpr double leastShare = 0.5;

double x(double budget)
{
    return left + width * budget / mostBudget;
}

double y(double share)
{
    return top + height * (1 - (share - leastShare) / (1 - leastShare));
}

void words(std::ostringstream& out, double atX, double atY, const std::string& anchor, const std::string& text)
{
    out << "<text x='" << atX << "' y='" << atY << "' text-anchor='" << anchor << "'>" << text << "</text>\n";
}

}  // namespace

std::string tradeOffPicture(const std::vector<Curve>& curves)
{
    // Hue and dashes both tell curves apart; hues after Okabe and Ito 2008.
    constexpr std::array hues{"#0072b2", "#d55e00", "#009e73", "#cc79a7"};
    std::ostringstream out;
    out << "<svg xmlns='http://www.w3.org/2000/svg' width='860' height='430' font-family='sans-serif' font-size='12'>\n"
        << "<rect width='860' height='430' fill='white'/>\n";
    for (int budget = 0; budget <= 20; budget += 5) {
        out << "<path d='M" << x(budget) << ' ' << top << "V" << top + height << "' stroke='#ddd'/>\n";
        words(out, x(budget), top + height + 18, "middle", std::to_string(budget));
    }
    for (int tenth = 5; tenth <= 10; ++tenth) {
        out << "<path d='M" << left << ' ' << y(tenth / 10.0) << "H" << left + width << "' stroke='#ddd'/>\n";
        words(out, left - 8, y(tenth / 10.0) + 4, "end", tenth == 10 ? "1.0" : "0." + std::to_string(tenth));
    }
    words(out, left + width / 2, top + height + 40, "middle", "budget: false alerts per 100 uncomplicated courses");
    words(out, left, 14, "start", "share found, worst rhythm");
    const std::size_t half = (curves.size() + 1) / 2;
    for (std::size_t i = 0; i < curves.size(); ++i) {
        const std::string stroke = std::string("stroke='") + hues[i % half % hues.size()] + "' stroke-width='2' fill='none'"
                                   + (i < half ? "" : " stroke-dasharray='6 4'");
        out << "<path d='";
        for (std::size_t k = 0; k < curves[i].points.size(); ++k)
            out << (k == 0 ? 'M' : 'L') << x(curves[i].points[k].first) << ' ' << y(curves[i].points[k].second);
        out << "' " << stroke << "/>\n";
        const double row = top + 20 + 22 * static_cast<double>(i);
        out << "<path d='M560 " << row << "h30' " << stroke << "/>\n";
        words(out, 598, row + 4, "start", curves[i].name);
    }
    out << "</svg>\n";
    return out.str();
}

}  // namespace ebbline::bench
