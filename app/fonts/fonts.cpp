#include "app/fonts/fonts.h"

#include <QDir>
#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>

namespace ebbline::app {

void loadFonts()
{
    const QDir folder(QStringLiteral(":/fonts"));
    for (const QString& file : folder.entryList(QDir::Files))
        QFontDatabase::addApplicationFont(folder.filePath(file));
    QFont font(QStringLiteral("Noto Sans"));
    const QStringList others{QStringLiteral("Noto Sans Arabic UI"), QStringLiteral("Noto Sans CJK SC")};
    font.setFamilies(QStringList{QStringLiteral("Noto Sans")} + others);
    // A page that asks for the first family alone is given the others for what it lacks.
    QFont::insertSubstitutions(QStringLiteral("Noto Sans"), others);
    QGuiApplication::setFont(font);
}

}  // namespace ebbline::app
