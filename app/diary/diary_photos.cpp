// The pages of photographs: the way to them, and the way back.

#include "app/diary/diary_program.h"

namespace ebbline::app {

void DiaryProgram::wirePhotos()
{
    connect(&m_photo, &diaryapp::PhotoBoard::kept, this, &DiaryProgram::syncNow);
    connect(&m_photo, &diaryapp::PhotoBoard::left, this, &DiaryProgram::openHistory);
    connect(&m_picture, &diaryapp::PictureBoard::removed, this, [this] {
        openHistory();
        say(tr("Taken back. It is no longer on this phone."));
        syncNow();
    });
}

void DiaryProgram::openPhoto()
{
    if (!m_home.isOpen() || !m_home.diary().joined())
        return;
    m_photo.begin({});
    turnTo(Page::photo);
}

void DiaryProgram::saveThenPhoto()
{
    m_entry.save();
    // A refused entry is still on its page, and a warning is on its own: both come first.
    if (m_page != Page::today)
        return;
    m_photo.begin(m_entry.savedEntry().value_or(recovery::EntryId{}));
    turnTo(Page::photo);
}

void DiaryProgram::openPicture(const QString& key)
{
    if (m_home.isOpen() && m_picture.open(key))
        turnTo(Page::picture);
}

}  // namespace ebbline::app
