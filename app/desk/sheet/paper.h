#pragma once
/// \file
/// A list for paper: a call list, a hand-over note, a course. Title, who it is for, tables and lines, with
/// page numbers; readable in black and white, right to left where the language runs so. Never more names
/// than the list is about, and none in the file's properties.

#include "app/desk/sheet/pages.h"

#include <QList>
#include <QStringList>

namespace ebbline::deskapp {

struct PaperPart {
    QString heading;          ///< may be empty
    QStringList lines;        ///< paragraphs
    QStringList header;       ///< of the table; empty: no table
    QList<QStringList> rows;
};

struct Paper {
    QString title;
    QString stamp;            ///< clinic, by whom and when; also at the foot of each page
    QList<PaperPart> parts;

    /// The same as plain text.
    QString asText() const;
};

/// The list on pages, for paintPages().
std::unique_ptr<Pages> pagesOf(const Paper& paper, const QSizeF& size, bool mirrored);

/// Writes `.pdf` (A4, or Letter) or `.txt` by the end of the name.
/// \returns Reason::unsupported for another end, Reason::storageFailed.
Done writePaper(const Paper& paper, const QString& file, bool letter, bool mirrored);

}  // namespace ebbline::deskapp
