#pragma once
/// \file
/// Work that takes too long for the thread that draws: on a thread of the pool, with its result as a future. Who waits
/// for it holds a QFutureWatcher, so that nothing comes back to what is gone.

#include <QFuture>
#include <QPromise>
#include <QThreadPool>

#include <memory>
#include <type_traits>

namespace ebbline::diaryapp {

/// `work` is copied to the other thread and shares nothing with this one.
template <typename Work>
QFuture<std::invoke_result_t<Work>> aside(Work work)
{
    const auto promise = std::make_shared<QPromise<std::invoke_result_t<Work>>>();
    promise->start();
    QThreadPool::globalInstance()->start([promise, work = std::move(work)] {
        promise->addResult(work());
        promise->finish();
    });
    return promise->future();
}

}  // namespace ebbline::diaryapp
