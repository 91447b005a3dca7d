#include "tests/bench/tradeoff_picture.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <sstream>

namespace ebbline::bench {

namespace {

constexpr double left = 60;
constexpr double top = 20;
constexpr double width = 480;
constexpr double height = 360;
constexpr int mostTenths = 10;

double x(double burden, const Burden& across)
{
    return left + width * burden / across.most;
}

/// The tenth below all curves, 5 at most.
int leastTenths(const std::vector<Curve>& curves)
{
    double least = 0.5;
    for (const Curve& curve : curves)
        for (const auto& [burden, share] : curve.points)
            least = std::min(least, share);
    return static_cast<int>(std::floor(mostTenths * least));
}

double y(double share, int tenths)
{
    return top + height * (mostTenths * (1 - share)) / (mostTenths - tenths);
}

void words(std::ostringstream& out, double atX, double atY, const std::string& anchor, const std::string& text)
{
    out << "<text x='" << atX << "' y='" << atY << "' text-anchor='" << anchor << "'>" << text << "</text>\n";
}

}  // namespace

std::string tradeOffPicture(const Burden& burden, const std::vector<Curve>& curves)
{
    // Hue and dashes both tell curves apart; hues after Okabe and Ito 2008.
    constexpr std::array hues{"#0072b2", "#d55e00", "#009e73", "#cc79a7"};
    std::ostringstream out;
    out << "<svg xmlns='http://www.w3.org/2000/svg' width='860' height='430' font-family='sans-serif' font-size='12'>\n"
        << "<rect width='860' height='430' fill='white'/>\n";
    for (int mark = 0; mark <= burden.most; mark += burden.step) {
        out << "<path d='M" << x(mark, burden) << ' ' << top << "V" << top + height << "' stroke='#ddd'/>\n";
        words(out, x(mark, burden), top + height + 18, "middle", std::to_string(mark));
    }
    const int least = leastTenths(curves);
    for (int tenth = least; tenth <= mostTenths; ++tenth) {
        out << "<path d='M" << left << ' ' << y(tenth / 10.0, least) << "H" << left + width << "' stroke='#ddd'/>\n";
        words(out, left - 8, y(tenth / 10.0, least) + 4, "end", tenth == 10 ? "1.0" : "0." + std::to_string(tenth));
    }
    words(out, left + width / 2, top + height + 40, "middle", burden.words);
    words(out, left, 14, "start", "share found, worst rhythm");
    const std::size_t half = (curves.size() + 1) / 2;
    for (std::size_t i = 0; i < curves.size(); ++i) {
        const std::string stroke = std::string("stroke='") + hues[i % half % hues.size()] + "' stroke-width='2' fill='none'"
                                   + (i < half ? "" : " stroke-dasharray='6 4'");
        out << "<path d='";
        for (std::size_t k = 0; k < curves[i].points.size(); ++k)
            out << (k == 0 ? 'M' : 'L') << x(curves[i].points[k].first, burden) << ' ' << y(curves[i].points[k].second, least);
        out << "' " << stroke << "/>\n";
        const double row = top + 20 + 22 * static_cast<double>(i);
        out << "<path d='M560 " << row << "h30' " << stroke << "/>\n";
        words(out, 598, row + 4, "start", curves[i].name);
    }
    out << "</svg>\n";
    return out.str();
}

}  // namespace ebbline::bench
