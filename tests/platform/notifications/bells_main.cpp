// Runs the cases with an event loop at hand, as the bells have one.
#include <catch2/catch_session.hpp>

#include <QCoreApplication>

int main(int argc, char* argv[])
{
    int count = 1;
    QCoreApplication application(count, argv);
    return Catch::Session().run(argc, argv);
}
