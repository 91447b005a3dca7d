#include "app/desk/model/begun.h"

#include "app/desk/model/words.h"

namespace ebbline::deskapp {

namespace {

std::string nameOf(const QString& place)
{
    return "desk/begun/" + place.toStdString();
}

}  // namespace

QString begunWords(Workplace& workplace, const QString& place)
{
    if (!workplace.isOpen()) {
        return {};
    }
    const auto kept = workplace.desk().vault().kept(nameOf(place));
    return kept ? QString::fromUtf8(reinterpret_cast<const char*>(kept->data()), static_cast<qsizetype>(kept->size())) : QString();
}

void keepBegun(Workplace& workplace, const QString& place, const QString& words)
{
    if (!workplace.isOpen() || words == begunWords(workplace, place)) {
        return;
    }
    const auto text = words.toStdString();
    if (const auto kept = workplace.desk().vault().keep(nameOf(place), bytes::viewOf(text)); !kept) {
        Q_EMIT workplace.failed(errorText(kept.error()));
    }
}

}  // namespace ebbline::deskapp
