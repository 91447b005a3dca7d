#pragma once
/// \file
/// A picture of docs/statistics: axes, what a method makes of its numbers, and a legend (SVG 1.1), in
/// the light tokens of the programs (app/theme). Left is solid with round marks, right dashed with
/// squares: nothing is told by colour alone.

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace ebbline::bench {

namespace ink {
inline constexpr std::string_view text = "#1B2730";
inline constexpr std::string_view soft = "#4A5862";
inline constexpr std::string_view tide = "#0E5A6B";
inline constexpr std::string_view left = "#6A3D8F";
inline constexpr std::string_view right = "#9A4F00";
inline constexpr std::string_view call = "#A3341B";
inline constexpr std::string_view next = "#2F4A9E";
inline constexpr std::string_view edge = "#717E86";
inline constexpr std::string_view sand = "#EADFC8";
inline constexpr std::string_view wetSand = "#D9C9A3";
}  // namespace ink

enum class Dash { solid, dashed, dotted };
enum class Mark { round, square, hollow, cross };

struct Stroke {
    std::string_view colour = ink::tide;
    Dash dash = Dash::solid;
    double width = 2;
};

using Points = std::vector<std::pair<double, double>>;

struct Axis {
    std::string title;
    double from;
    double to;
    std::vector<std::pair<double, std::string>> ticks;
};

/// Ticks at every `step` from `from` to `to`, so many digits after the point.
Axis axis(std::string title, double from, double to, double step, int digits = 0);

class Picture {
public:
    /// `says` is the picture in one sentence, for who cannot see it.
    Picture(std::string says, Axis across, Axis up);

    /// An area between two curves, with its edges drawn.
    void band(const Points& low, const Points& high, std::string_view fill, const std::string& name);
    void line(const Points& points, const Stroke& stroke, const std::string& name = {});
    /// Stays at a value until the next one.
    void steps(const Points& points, const Stroke& stroke, const std::string& name = {});
    void marks(const Points& points, Mark mark, std::string_view colour, const std::string& name = {});
    /// Vertical bars from `low` to `high` at x.
    void bar(double x, double low, double high, const Stroke& stroke);
    /// Horizontal bars from `low` to `high` at y.
    void reach(double y, double low, double high, const Stroke& stroke);
    void across(double y, const Stroke& stroke, const std::string& name = {});
    void upright(double x, const Stroke& stroke, const std::string& name = {});
    /// Words in the plot, their left end at (x, y).
    void words(double x, double y, const std::string& text, std::string_view colour = ink::soft);
    /// A line of the legend that draws nothing itself.
    void note(const std::string& text);

    std::string svg() const;

private:
    double atX(double x) const;
    double atY(double y) const;
    std::string path(const Points& points) const;
    void legend(const std::string& name, const std::string& sample);
    void put(const std::string& element) { m_body += element; }

    std::string m_says;
    Axis m_across;
    Axis m_up;
    std::string m_body;
    std::string m_legend;
    int m_legendRows = 0;
};

/// A picture under its file name, without ending.
struct Named {
    std::string name;
    Picture picture;
};

std::vector<Named> proportionPictures();
std::vector<Named> poolingPictures();
std::vector<Named> survivalPictures();
std::vector<Named> chartPictures();
std::vector<Named> smoothingPictures();
std::vector<Named> agreementPictures();
std::vector<Named> regressionPictures();
std::vector<Named> recoveryPictures();
std::vector<Named> triggerPictures();
std::vector<Named> learningPictures();
std::vector<Named> practicePictures();

}  // namespace ebbline::bench
