#include "tests/bench/pictures/picture.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace ebbline::bench {

namespace {

constexpr double width = 760;
constexpr double height = 380;
constexpr double plotLeft = 64;
constexpr double plotTop = 16;
constexpr double plotWidth = 470;
constexpr double plotHeight = 306;
constexpr double legendLeft = 552;
constexpr double legendRow = 20;
constexpr std::size_t legendLetters = 27;

std::string number(double value)
{
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.1f", value);
    return buffer;
}

std::string escaped(const std::string& text)
{
    std::string out;
    for (const char letter : text)
        switch (letter) {
        case '<': out += "&lt;"; break;
        case '>': out += "&gt;"; break;
        case '&': out += "&amp;"; break;
        default: out += letter;
        }
    return out;
}

std::string strokeOf(const Stroke& stroke)
{
    std::string text = " fill='none' stroke='" + std::string(stroke.colour) + "' stroke-width='" + number(stroke.width) + "'";
    if (stroke.dash == Dash::dashed)
        text += " stroke-dasharray='7 4'";
    if (stroke.dash == Dash::dotted)
        text += " stroke-dasharray='2 4'";
    return text;
}

std::string textAt(double x, double y, const std::string& anchor, const std::string& text, std::string_view colour)
{
    return "<text x='" + number(x) + "' y='" + number(y) + "' text-anchor='" + anchor + "' fill='" + std::string(colour) + "'>"
           + escaped(text) + "</text>\n";
}

std::string markAt(double x, double y, Mark mark, std::string_view colour)
{
    const std::string fill(colour);
    switch (mark) {
    case Mark::round: return "<circle cx='" + number(x) + "' cy='" + number(y) + "' r='3.2' fill='" + fill + "'/>\n";
    case Mark::hollow:
        return "<circle cx='" + number(x) + "' cy='" + number(y) + "' r='3.2' fill='#FFFFFF' stroke='" + fill + "' stroke-width='1.5'/>\n";
    case Mark::square:
        return "<rect x='" + number(x - 3) + "' y='" + number(y - 3) + "' width='6' height='6' fill='" + fill + "'/>\n";
    case Mark::cross:
        return "<path d='M" + number(x - 3) + " " + number(y - 3) + "l6 6m0 -6l-6 6' stroke='" + fill + "' stroke-width='1.6'/>\n";
    }
    return {};
}

/// At word ends, so that no row is wider than the legend.
std::vector<std::string> rowsOf(const std::string& text)
{
    std::vector<std::string> rows(1);
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t end = std::min(text.find(' ', from), text.size());
        const std::string word = text.substr(from, end - from);
        if (!rows.back().empty() && rows.back().size() + 1 + word.size() > legendLetters)
            rows.emplace_back();
        rows.back() += (rows.back().empty() ? "" : " ") + word;
        from = end + 1;
    }
    return rows;
}

}  // namespace

Axis axis(std::string title, double from, double to, double step, int digits)
{
    Axis made{std::move(title), from, to, {}};
    const auto count = std::lround((to - from) / step);
    for (long i = 0; i <= count; ++i) {
        const double value = from + static_cast<double>(i) * step;
        char text[32];
        std::snprintf(text, sizeof text, "%.*f", digits, value == 0 ? 0.0 : value);
        made.ticks.emplace_back(value, text);
    }
    return made;
}

Picture::Picture(std::string says, Axis across, Axis up)
    : m_says(std::move(says)), m_across(std::move(across)), m_up(std::move(up))
{
}

double Picture::atX(double x) const
{
    return plotLeft + plotWidth * (x - m_across.from) / (m_across.to - m_across.from);
}

/// Clipped to the plot: what runs out of it stays at its edge.
double Picture::atY(double y) const
{
    const double share = std::clamp((y - m_up.from) / (m_up.to - m_up.from), 0.0, 1.0);
    return plotTop + plotHeight * (1 - share);
}

std::string Picture::path(const Points& points) const
{
    std::string text;
    for (const auto& [x, y] : points)
        text += (text.empty() ? "M" : "L") + number(atX(x)) + " " + number(atY(y));
    return text;
}

void Picture::legend(const std::string& name, const std::string& sample)
{
    if (name.empty())
        return;
    const double top = plotTop + 12 + legendRow * m_legendRows;
    m_legend += "<g transform='translate(" + number(legendLeft) + " " + number(top) + ")'>" + sample + "</g>\n";
    for (const std::string& row : rowsOf(name)) {
        m_legend += textAt(legendLeft + 34, plotTop + 16 + legendRow * m_legendRows, "start", row, ink::text);
        ++m_legendRows;
    }
}

void Picture::note(const std::string& text)
{
    for (const std::string& row : rowsOf(text)) {
        m_legend += textAt(legendLeft + 34, plotTop + 16 + legendRow * m_legendRows, "start", row, ink::soft);
        ++m_legendRows;
    }
}

void Picture::band(const Points& low, const Points& high, std::string_view fill, const std::string& name)
{
    Points around = high;
    around.insert(around.end(), low.rbegin(), low.rend());
    put("<path d='" + path(around) + "Z' fill='" + std::string(fill) + "'/>\n");
    const Stroke edge{ink::edge, Dash::solid, 0.8};
    put("<path d='" + path(low) + "'" + strokeOf(edge) + "/>\n<path d='" + path(high) + "'" + strokeOf(edge) + "/>\n");
    legend(name, "<rect x='0' y='-6' width='26' height='12' fill='" + std::string(fill) + "' stroke='" + std::string(ink::edge)
                     + "' stroke-width='0.8'/>");
}

void Picture::line(const Points& points, const Stroke& stroke, const std::string& name)
{
    put("<path d='" + path(points) + "'" + strokeOf(stroke) + "/>\n");
    legend(name, "<path d='M0 0h26'" + strokeOf(stroke) + "/>");
}

void Picture::steps(const Points& points, const Stroke& stroke, const std::string& name)
{
    Points corners;
    for (const auto& point : points) {
        if (!corners.empty())
            corners.emplace_back(point.first, corners.back().second);
        corners.push_back(point);
    }
    line(corners, stroke, name);
}

void Picture::marks(const Points& points, Mark mark, std::string_view colour, const std::string& name)
{
    for (const auto& [x, y] : points)
        put(markAt(atX(x), atY(y), mark, colour));
    legend(name, markAt(13, 0, mark, colour));
}

void Picture::bar(double x, double low, double high, const Stroke& stroke)
{
    put("<path d='" + path({{x, low}, {x, high}}) + "'" + strokeOf(stroke) + "/>\n");
}

void Picture::reach(double y, double low, double high, const Stroke& stroke)
{
    put("<path d='" + path({{low, y}, {high, y}}) + "'" + strokeOf(stroke) + "/>\n");
}

void Picture::across(double y, const Stroke& stroke, const std::string& name)
{
    line({{m_across.from, y}, {m_across.to, y}}, stroke, name);
}

void Picture::upright(double x, const Stroke& stroke, const std::string& name)
{
    line({{x, m_up.from}, {x, m_up.to}}, stroke, name);
}

void Picture::words(double x, double y, const std::string& text, std::string_view colour)
{
    put(textAt(atX(x), atY(y), "start", text, colour));
}

std::string Picture::svg() const
{
    std::string out = "<svg xmlns='http://www.w3.org/2000/svg' width='" + number(width) + "' height='" + number(height)
                      + "' viewBox='0 0 " + number(width) + " " + number(height)
                      + "' role='img' font-family='Noto Sans, sans-serif' font-size='12'>\n<title>" + escaped(m_says) + "</title>\n"
                      + "<rect width='" + number(width) + "' height='" + number(height) + "' fill='#F6F4EE'/>\n<rect x='"
                      + number(plotLeft) + "' y='" + number(plotTop) + "' width='" + number(plotWidth) + "' height='"
                      + number(plotHeight) + "' fill='#FFFFFF' stroke='#7C8890' stroke-width='0.8'/>\n";
    const Stroke grid{"#E8E4DA", Dash::solid, 0.8};
    for (const auto& [value, text] : m_across.ticks) {
        out += "<path d='M" + number(atX(value)) + " " + number(plotTop) + "v" + number(plotHeight) + "'" + strokeOf(grid) + "/>\n";
        out += textAt(atX(value), plotTop + plotHeight + 17, "middle", text, ink::soft);
    }
    for (const auto& [value, text] : m_up.ticks) {
        out += "<path d='M" + number(plotLeft) + " " + number(atY(value)) + "h" + number(plotWidth) + "'" + strokeOf(grid) + "/>\n";
        out += textAt(plotLeft - 8, atY(value) + 4, "end", text, ink::soft);
    }
    out += textAt(plotLeft + plotWidth / 2, height - 18, "middle", m_across.title, ink::text);
    const double middle = plotTop + plotHeight / 2;
    out += "<text transform='translate(16 " + number(middle) + ") rotate(-90)' text-anchor='middle' fill='" + std::string(ink::text)
           + "'>" + escaped(m_up.title) + "</text>\n";
    return out + m_body + m_legend + "</svg>\n";
}

}  // namespace ebbline::bench
