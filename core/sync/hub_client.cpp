#include "core/sync/hub_client.h"

#include "core/sync/hub_time.h"

#include <algorithm>
#include <charconv>

namespace ebbline::sync {

namespace {

constexpr std::int64_t mostSeconds = 1'000'000;  ///< of a Retry-After: keeps what a hub says from overflowing a time
constexpr const char* statusText = "hub: status ";

/// How far our clock is ahead of the hub's; empty if it did not say.
std::optional<std::chrono::seconds> aheadOf(const Result<mailbox::Response>& response, std::chrono::seconds ours)
{
    if (response)
        if (const auto theirs = hubTimeIn(response->hubTime))
            return ours - *theirs;
    return std::nullopt;
}

}  // namespace

int statusOf(const Error& error)
{
    const std::string_view detail = error.detail;
    int status = 0;
    if (detail.starts_with(statusText))
        std::from_chars(detail.data() + std::string_view(statusText).size(), detail.data() + detail.size(), status);
    return status;
}

bool isUnknownThere(const Error& error)
{
    return statusOf(error) == 401;
}

Result<mailbox::Response> judged(Result<mailbox::Response> response)
{
    if (!response || (response->status >= 200 && response->status < 300))
        return response;
    const std::string status = statusText + std::to_string(response->status);
    switch (response->status) {
    case 401:
    case 404: return fail(Reason::refused, status);
    case 409: return fail(Reason::alreadyExists, status);
    case 413: return fail(Reason::tooLarge, status);
    case 429: return fail(Reason::tooSoon, std::to_string(response->retryAfterSeconds));
    case 507: return fail(Reason::storageFull, status);
    default: return fail(response->status >= 500 ? Reason::unreachable : Reason::malformed, status);
    }
}

void HubClient::signedRequest(mailbox::Request request, Answer answer)
{
    attempt(std::move(request), std::move(answer), true);
}

void HubClient::attempt(mailbox::Request request, Answer answer, bool again)
{
    mailbox::signRequest(request, m_key, m_clock.now() + m_offset);
    const auto self = shared_from_this();
    m_courier.send(request, [self, request, answer = std::move(answer), again](Result<mailbox::Response> response) {
        const auto ours = std::chrono::floor<std::chrono::seconds>(self->m_clock.now().time_since_epoch());
        if (const auto ahead = aheadOf(response, ours)) {
            self->m_ahead = *ahead;
            if (response->status == 401 && again) {
                self->m_offset = -*ahead;
                self->attempt(request, answer, false);
                return;
            }
        }
        const bool good = response && response->status >= 200 && response->status < 300;
        self->m_retryAfter = std::chrono::seconds(response && !good ? std::clamp<std::int64_t>(response->retryAfterSeconds, 0, mostSeconds) : 0);
        answer(judged(std::move(response)));
    });
}

void HubClient::plainRequest(Courier& courier, const mailbox::Request& request, const Answer& answer)
{
    courier.send(request, [answer](Result<mailbox::Response> response) { answer(judged(std::move(response))); });
}

}  // namespace ebbline::sync
