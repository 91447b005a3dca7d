#include "core/sync/listening.h"

#include "core/mailbox/service.h"
#include "core/sync/hub_client.h"
#include "core/sync/post.h"

#include <algorithm>
#include <utility>

namespace ebbline::sync {

namespace {

/// Two clocks count a wait, and either may round. Our own choice.
constexpr std::chrono::milliseconds roundedAway{500};

}  // namespace

struct Listening::Inside {
    Inside(const vault::Vault& own, Courier& courier)
        : vault(own), hub(std::make_shared<HubClient>(courier, own.signingKey(), own.clock()))
    {
    }

    bool isClinic() const { return vault.owner() == vault::Vault::Owner::clinic; }

    Result<mailbox::Request> question(std::chrono::seconds atMost) const
    {
        const std::string wait = "wait=" + std::to_string(std::clamp(atMost, std::chrono::seconds(1), mailbox::longestWait).count());
        const auto posts = postsOf(vault);
        if (!posts)
            return fail(posts.error());
        const auto post = std::ranges::find_if(*posts, [](const Post& each) { return !each.ended; });
        if (post == posts->end())
            return fail(Reason::notFound, "listening: there is no mailbox");
        if (isClinic())
            return mailbox::Request{"GET", "/v1/news", wait + (known.empty() ? "" : "&known=" + known), {}, {}};
        const Result<std::string> after = questionFor(vault, *post);
        if (!after)
            return fail(after.error());
        return mailbox::Request{"GET", mailboxPath(post->mailbox), *after + (after->empty() ? "" : "&") + wait, {}, {}};
    }

    Heard heardFrom(const Result<mailbox::Response>& response, bool toItsEnd)
    {
        if (!response)
            return {fail(response.error()), hub->retryAfter()};
        if (!isClinic())
            return {!response->body.empty()};
        // The same mailboxes before the time is over: something more was put into one of them. At its end: what lies there for good.
        const std::string before = std::exchange(known, mailbox::knownNews(response->body));
        return {!response->body.empty() && !(toItsEnd && known == before)};
    }

    const vault::Vault& vault;
    std::shared_ptr<HubClient> hub;
    std::string known;  ///< of the news that the hub told last
    bool waiting = false;
};

Listening::Listening(const vault::Vault& vault, Courier& courier) : m_inside(std::make_shared<Inside>(vault, courier)) {}
Listening::~Listening() = default;

bool Listening::isWaiting() const { return m_inside->waiting; }

void Listening::wait(std::chrono::seconds atMost, std::function<void(Heard)> answered)
{
    if (m_inside->waiting)
        return;
    auto request = m_inside->question(atMost);
    if (!request)
        return answered({fail(request.error())});
    m_inside->waiting = true;
    const std::weak_ptr<Inside> alive = m_inside;
    const clock::Uptime began = m_inside->vault.clock().uptime();
    m_inside->hub->signedRequest(std::move(*request), [alive, atMost, began, answered = std::move(answered)](const Result<mailbox::Response>& response) {
        const auto inside = alive.lock();
        if (!inside)
            return;
        inside->waiting = false;
        const auto lasts = std::clamp(atMost, std::chrono::seconds(1), mailbox::longestWait) - roundedAway;
        answered(inside->heardFrom(response, inside->vault.clock().uptime().elapsed - began.elapsed >= lasts));
    });
}

}  // namespace ebbline::sync
