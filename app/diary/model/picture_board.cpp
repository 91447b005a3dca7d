#include "app/diary/model/picture_board.h"

namespace ebbline::diaryapp {

PictureBoard::PictureBoard(Home& home, PhotoShelf& shelf, QObject* parent) : QObject(parent), m_home(home), m_shelf(shelf)
{
    connect(&home, &Home::changed, this, &PictureBoard::changed);
    connect(&home, &Home::openChanged, this, [this] {
        m_key.clear();
        keep();
    });
}

std::optional<patient::PhotoView> PictureBoard::view() const
{
    const auto photo = photoOf(m_key);
    if (photo && m_home.isOpen())
        for (const patient::PhotoView& view : m_home.diary().photos())
            if (view.photo == *photo)
                return view;
    return {};
}

bool PictureBoard::open(const QString& key)
{
    m_key = key;
    keep();
    return view().has_value();
}

PhotoLine PictureBoard::line() const
{
    const auto shown = view();
    return shown ? photoLine(*shown, m_home.now(), m_home.zone()) : PhotoLine{};
}

bool PictureBoard::isArrived() const
{
    const auto shown = view();
    return shown && shown->received;
}

void PictureBoard::askRemove()
{
    m_asking = true;
    m_problem.clear();
    Q_EMIT changed();
}

void PictureBoard::keep()
{
    m_asking = false;
    m_problem.clear();
    Q_EMIT changed();
}

void PictureBoard::remove()
{
    const auto photo = photoOf(m_key);
    if (!m_asking || !photo || !m_home.isOpen())
        return;
    if (!m_home.diary().removePhoto(*photo)) {
        m_problem = tr("It could not be taken back. Try again.");
        return Q_EMIT changed();
    }
    m_shelf.forget(m_key);
    m_key.clear();
    m_asking = false;
    Q_EMIT removed();
    m_home.touch();
}

}  // namespace ebbline::diaryapp
