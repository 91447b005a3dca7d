#pragma once
/// \file
/// Pages that are laid out for one size of paper, and the way onto a device that turns pages: a PDF file or a printer.

#include "core/result/result.h"

#include <QSizeF>

#include <functional>
#include <memory>

class QPagedPaintDevice;
class QPainter;

namespace ebbline::deskapp {

inline constexpr double unitsPerInch = 96;  ///< CSS pixels

class Pages {
public:
    virtual ~Pages() = default;
    virtual int pageCount() const = 0;
    /// \pre 0 <= page < pageCount(); the painter's unit is unitsPerInch, its origin the corner of the paper.
    virtual void paint(QPainter& painter, int page) const = 0;
};

/// Lays out for paper of this size, in units, margins included.
using LayOut = std::function<std::unique_ptr<Pages>(const QSizeF& paper)>;

/// Every page, on the paper that the device has. \returns Reason::storageFailed if the device takes no page.
Done paintPages(QPagedPaintDevice& device, const LayOut& layOut);

}  // namespace ebbline::deskapp
