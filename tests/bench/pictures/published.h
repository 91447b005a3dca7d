#pragma once
/// \file
/// Published series that the pictures are drawn from; the tests of core/statistics hold the figures.

#include "core/statistics/loess.h"
#include "core/statistics/pooling.h"
#include "core/statistics/survival.h"

#include <array>
#include <vector>

namespace ebbline::bench {

/// NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.4, doi:10.18434/M32189.
inline constexpr std::array ewmaExample{52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5,
                                        49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
/// The same, section 6.3.2.3.
inline constexpr std::array cusumExample{324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125,
                                         324.525, 325.225, 324.600, 324.625, 325.150, 328.325, 327.250,
                                         327.825, 328.500, 326.675, 327.775, 326.875, 328.350};
/// The same, section 4.1.4.4.
inline const std::vector<statistics::Point> loessExample{
    {0.5578196, 18.63654},   {2.0217271, 103.49646},  {2.5773252, 150.35391},  {3.4140288, 190.51031},  {4.3014084, 208.70115},
    {4.7448394, 213.71135},  {5.1073781, 228.49353},  {6.5411662, 233.55387},  {6.7216176, 234.55054},  {7.2600583, 223.89225},
    {8.1335874, 227.68339},  {9.1224379, 223.91982},  {11.9296663, 168.01999}, {12.3797674, 164.95750}, {13.2728619, 152.61107},
    {14.2767453, 160.78742}, {15.3731026, 168.55567}, {15.6476637, 152.42658}, {18.5605355, 221.70702}, {18.5866354, 222.69040},
    {18.7572812, 243.18828}};

/// E. A. Gehan, Biometrika 52 (1965) 203-223: weeks of remission, as R's MASS::gehan.
inline const std::vector<statistics::Followed> treatedWeeks{
    {6, true},   {6, true},   {6, true},   {6, false},  {7, true},   {9, false},  {10, true},  {10, false}, {11, false}, {13, true}, {16, true},
    {17, false}, {19, false}, {20, false}, {22, true},  {23, true},  {25, false}, {32, false}, {32, false}, {34, false}, {35, false}};
inline const std::vector<statistics::Followed> controlWeeks{
    {1, true}, {1, true}, {2, true},  {2, true},  {3, true},  {4, true},  {4, true},  {5, true},  {5, true},  {8, true}, {8, true},
    {8, true}, {8, true}, {11, true}, {11, true}, {12, true}, {12, true}, {15, true}, {17, true}, {22, true}, {23, true}};

/// J. M. Bland, D. G. Altman, Lancet 327 (1986) 307-310: peak expiratory flow, two meters.
inline constexpr std::array largeMeter{494.0, 395.0, 516.0, 434.0, 476.0, 557.0, 413.0, 442.0, 650.0,
                                       433.0, 417.0, 656.0, 267.0, 478.0, 178.0, 423.0, 427.0};
inline constexpr std::array smallMeter{512.0, 430.0, 520.0, 428.0, 500.0, 600.0, 364.0, 380.0, 658.0,
                                       445.0, 432.0, 626.0, 260.0, 477.0, 259.0, 350.0, 451.0};

/// R. E. Tarone, Biometrics 38 (1982) 215-220, as in Gelman et al., Bayesian Data Analysis, section 5.1:
/// tumours among so many rats, the last group being the present one.
inline const std::vector<statistics::Counts> ratGroups = [] {
    constexpr std::array tumours{0,  0,  0, 0, 0, 0, 0, 0, 0, 0, 0, 0,  0, 0, 1, 1, 1, 1,  1,  1, 1, 1, 2, 2,
                                 2,  2,  2, 2, 2, 2, 2, 1, 5, 2, 5, 3,  2, 7, 7, 3, 3, 2,  9,  10, 4, 4, 4, 4,
                                 4,  4,  4, 10, 4, 4, 4, 5, 11, 12, 5, 5, 6, 5, 6, 6, 6, 6, 16, 15, 15, 9, 4};
    constexpr std::array rats{20, 20, 20, 20, 20, 20, 20, 19, 19, 19, 19, 18, 18, 17, 20, 20, 20, 20, 19, 19, 18, 18, 25, 24,
                              23, 20, 20, 20, 20, 20, 20, 10, 49, 19, 46, 27, 17, 49, 47, 20, 20, 13, 48, 50, 20, 20, 20, 20,
                              20, 20, 20, 48, 19, 19, 19, 22, 46, 49, 20, 20, 23, 19, 22, 20, 20, 20, 52, 46, 47, 24, 14};
    static_assert(tumours.size() == 71 && rats.size() == 71);
    std::vector<statistics::Counts> groups;
    for (std::size_t i = 0; i < tumours.size(); ++i)
        groups.push_back({tumours[i], rats[i]});
    return groups;
}();

}  // namespace ebbline::bench
