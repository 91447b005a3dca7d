#pragma once
/// \file
/// Lays a follow-up sheet out on pages and paints them: on paper and on the screen the same.
/// Units are CSS pixels, 96 to the inch. Black on white, with line styles and words instead of
/// colours, so that a copier loses nothing; photographs, if any, keep their colours.

#include "app/desk/sheet/pages.h"
#include "app/desk/sheet/sheet_content.h"

#include <QFont>
#include <QSizeF>

#include <functional>
#include <vector>

class QPainter;

namespace ebbline::deskapp {

class SheetLayout : public Pages {
public:
    /// `page` in units, margins included. Text runs right to left if `mirrored`; faces and curves
    /// never do.
    SheetLayout(SheetContent content, const QSizeF& page, bool mirrored);

    int pageCount() const override { return m_pages; }
    QSizeF pageSize() const { return m_page; }
    void paint(QPainter& painter, int page) const override;

private:
    struct Block {
        int page;
        QRectF area;
        std::function<void(QPainter&, const QRectF&)> draw;
    };

    void place(double height, std::function<void(QPainter&, const QRectF&)> draw, double keepWith = 0);
    void heading(const QString& text, double company = 90);
    void paragraph(const QString& text, const QFont& font, double company = 0);
    void question(const QString& text);
    void table(const QStringList& titles, const QList<double>& widths, const QList<QStringList>& rows);
    void fields(const QList<SheetField>& fields, int columns);
    void map();
    void curves();
    void photos();
    double textHeight(const QString& text, const QFont& font, double width) const;
    QRectF mirroredIn(const QRectF& area, double left, double width) const;

    SheetContent m_content;
    QSizeF m_page;
    bool m_mirrored;
    QFont m_body;
    QFont m_bold;
    QFont m_small;
    QFont m_title;
    double m_y = 0;
    int m_pages = 1;
    std::vector<Block> m_blocks;
};

/// The fonts of paper: shipped with the program, sized in units.
QFont paperFont(double size, bool bold = false);

/// Writes the sheet as a PDF. `page` is QPageSize::A4 or QPageSize::Letter.
/// \returns Reason::storageFailed if the file cannot be written.
Done writeSheetPdf(const SheetContent& content, const QString& file, int page, bool mirrored);

}  // namespace ebbline::deskapp
