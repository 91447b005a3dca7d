#include "tests/simulation/counters.h"

namespace ebbline::simulation {

namespace {

/// What happens in every fifth schedule or more seldom: in so many it must have happened.
constexpr std::uint64_t often = 60;

}  // namespace

void add(NetworkCounters& to, const NetworkCounters& from)
{
    to.requests += from.requests;
    to.handled += from.handled;
    to.lost += from.lost;
    to.answersLost += from.answersLost;
    to.repeated += from.repeated;
    to.slow += from.slow;
    to.cutOff += from.cutOff;
    to.late += from.late;
}

void add(WorldCounters& to, const WorldCounters& from)
{
    to.photos += from.photos;
    to.photosTakenBack += from.photosTakenBack;
    to.photosArrived += from.photosArrived;
    to.photosRefused += from.photosRefused;
    to.chunksSent += from.chunksSent;
    to.chunksReceived += from.chunksReceived;
    to.entries += from.entries;
    to.amended += from.amended;
    to.messages += from.messages;
    to.openings += from.openings;
    to.runs += from.runs;
    to.restarts += from.restarts;
    to.cuts += from.cuts;
    to.refused += from.refused;
    to.operationsReceived += from.operationsReceived;
    to.envelopesReceived += from.envelopesReceived;
    to.envelopesSent += from.envelopesSent;
    to.gaps += from.gaps;
    to.forks += from.forks;
    to.rolledBack += from.rolledBack;
    to.quarantined += from.quarantined;
    to.garbled += from.garbled;
    to.silent += from.silent;
    to.unproved += from.unproved;
    to.problems += from.problems;
    to.desksJoined += from.desksJoined;
    to.desksShutOut += from.desksShutOut;
    to.actsOnFindings += from.actsOnFindings;
    to.findingsClosed += from.findingsClosed;
    to.actsTakenBack += from.actsTakenBack;
    to.wordsHandedOver += from.wordsHandedOver;
    to.actsOfFurtherDesks += from.actsOfFurtherDesks;
    to.epochsBegun += from.epochsBegun;
    to.epochsBegunUnderWay += from.epochsBegunUnderWay;
    to.phoneKeysBegun += from.phoneKeysBegun;
    to.phoneKeysBegunUnderWay += from.phoneKeysBegunUnderWay;
    to.sealedToEarlierEpochs += from.sealedToEarlierEpochs;
    to.phonesReplacedAtHand += from.phonesReplacedAtHand;
    to.phonesLost += from.phonesLost;
    to.hubsPutBack += from.hubsPutBack;
    to.hubsTidied += from.hubsTidied;
    to.desksRestored += from.desksRestored;
    to.desksRestoredKnew += from.desksRestoredKnew;
    to.phonesRestored += from.phonesRestored;
    to.phonesRestoredKnew += from.phonesRestoredKnew;
    to.setUpAnew += from.setUpAnew;
    to.keptFromTheEnded += from.keptFromTheEnded;
    to.refusedByHub += from.refusedByHub;
    to.acknowledgedEntries += from.acknowledgedEntries;
    to.onlyOnPhones += from.onlyOnPhones;
    to.goneWithADesk += from.goneWithADesk;
}

std::vector<CounterRow> rowsOf(const NetworkCounters& network, const WorldCounters& world)
{
    return {
        {"entries recorded", world.entries, 1},
        {"entries amended", world.amended, 1},
        {"messages", world.messages, 1},
        {"photographs taken", world.photos, 1},
        {"photographs taken back", world.photosTakenBack, 1},
        {"photographs arrived", world.photosArrived, 1},
        {"chunks put up", world.chunksSent, 1},
        {"chunks fetched", world.chunksReceived, 1},
        {"openings", world.openings, 1},
        {"sync runs", world.runs, 1},
        {"operations delivered", world.operationsReceived, 1},
        {"entries that the clinic acknowledged", world.acknowledgedEntries, 1},
        {"requests", network.requests, 1},
        {"requests lost", network.lost, 1},
        {"answers lost", network.answersLost, 1},
        {"requests repeated", network.repeated, 1},
        {"slow by up to an hour", network.slow, 1},
        {"answers too late", network.late, 1},
        {"requests while cut off", network.cutOff, 1},
        {"programs started again", world.restarts, 1},
        {"power cuts", world.cuts, 1},
        {"refused, the power being off or the clock wrong", world.refused, 1},
        {"further desks that joined", world.desksJoined, often},
        {"desks that were shut out", world.desksShutOut, often},
        {"acts on findings", world.actsOnFindings, often},
        {"findings closed", world.findingsClosed, often},
        {"acts taken back", world.actsTakenBack, often},
        {"words handed over", world.wordsHandedOver, often},
        {"of all acts, those of further desks", world.actsOfFurtherDesks, often},
        {"epochs begun", world.epochsBegun, often},
        {"with envelopes of phones under way", world.epochsBegunUnderWay, often},
        {"keys of phones begun", world.phoneKeysBegun, often},
        {"with envelopes of desks under way", world.phoneKeysBegunUnderWay, often},
        {"envelopes that came sealed to an earlier epoch", world.sealedToEarlierEpochs, often},
        {"phones replaced at hand", world.phonesReplacedAtHand, often},
        {"phones lost", world.phonesLost, often},
        {"phones restored from a backup", world.phonesRestored, often},
        {"of which it showed", world.phonesRestoredKnew, often},
        {"desks restored from a backup", world.desksRestored, often},
        {"mailboxes where it showed", world.desksRestoredKnew, often},
        {"devices set up anew for it", world.setUpAnew, often},
        {"hubs put back to an older copy", world.hubsPutBack, often},
        {"hubs that let go of what is old", world.hubsTidied, often},
        {"envelopes tried with keys of the ended", world.keptFromTheEnded, often},
        {"ended devices that the hub refused", world.refusedByHub, often},
    };
}

}  // namespace ebbline::simulation
