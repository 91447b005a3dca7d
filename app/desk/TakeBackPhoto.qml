// Asks once more before a photograph of the clinic's is taken back: what goes does not come back.
import Ebbline.Desk

AskCard {
    id: root

    required property PhotoComparison comparison

    question: root.comparison.takeBackQuestion
    act: qsTr("Take it back")
    stay: qsTr("Keep the photograph")
    onActed: root.comparison.takeBack()
    onStayed: root.comparison.leaveTakingBack()
}
