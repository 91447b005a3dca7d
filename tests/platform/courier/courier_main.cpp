// Runs the cases inside an application, because the network needs an event loop.
#include "core/crypto/crypto.h"

#include <catch2/catch_session.hpp>

#include <QCoreApplication>

int main(int argc, char* argv[])
{
    int count = 1;
    QCoreApplication application(count, argv);
    if (!ebbline::crypto::initialise())
        return 1;
    return Catch::Session().run(argc, argv);
}
