#include "app/controls/code_on_paper.h"

#include "app/controls/typed_secret.h"
#include "core/vault/recovery_code.h"

#include <string_view>

namespace ebbline::controls {

int CodeOnPaper::groups()
{
    return vault::RecoveryCode::characters / 4;  // as vault::RecoveryCode::text() writes it
}

void CodeOnPaper::show(const QString& code)
{
    forget();
    m_code = code;
}

void CodeOnPaper::forget()
{
    m_code.fill(QChar(0));
    m_code.clear();
    m_group = 0;
}

bool CodeOnPaper::ask()
{
    if (!isThere() || isAsking())
        return false;
    m_group = vault::groupToAsk();
    return true;
}

bool CodeOnPaper::isOnPaper(const QString& typed) const
{
    if (!isAsking())
        return false;
    const TypedSecret paper(typed);
    const TypedSecret whole(m_code);
    const auto text = [](const TypedSecret& secret) {
        return std::string_view(reinterpret_cast<const char*>(secret.view().data()), secret.view().size());
    };
    return vault::saysGroup(text(whole), m_group, text(paper));
}

}  // namespace ebbline::controls
