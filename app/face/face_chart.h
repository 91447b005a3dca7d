#pragma once
/// \file
/// The face chart as an item: shows placements, and takes new ones by mouse, pen, touch or keys.
///
/// Never mirrored: the patient's left stays on the right of the front picture in every language.
/// Drawing with keys: arrows move a cursor (with Shift one unit at a time), Space or Enter sets
/// the entry point and then the end, Escape starts over. Page Up and Page Down choose a thread of
/// the view; Home takes hold of its entry point and End of its end, the arrows carry it, Space or
/// Enter puts it down, Escape leaves it where it was.

#include "app/face/face_paint.h"

#include <QQuickPaintedItem>

#include <optional>

namespace ebbline::face {

class FaceChart : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int view READ view WRITE setView NOTIFY viewChanged FINAL)  ///< recovery::ChartView
    Q_PROPERTY(QList<ebbline::face::Track> tracks READ tracks WRITE setTracks NOTIFY tracksChanged FINAL)
    Q_PROPERTY(int selected READ selected WRITE setSelected NOTIFY selectedChanged FINAL)  ///< number, 0 none
    Q_PROPERTY(bool drawable READ isDrawable WRITE setDrawable NOTIFY drawableChanged FINAL)
    Q_PROPERTY(bool cautionsShown READ areCautionsShown WRITE setCautionsShown NOTIFY cautionsShownChanged FINAL)
    /// recovery::Side whose half of the front view is tinted, 0 for none.
    Q_PROPERTY(int tintedSide READ tintedSide WRITE setTintedSide NOTIFY tintedSideChanged FINAL)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QColor foldColor MEMBER m_fold NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QColor leftColor MEMBER m_left NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QColor rightColor MEMBER m_right NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QColor cautionColor MEMBER m_caution NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QColor paper MEMBER m_paper NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QColor selectionColor MEMBER m_selection NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QString leftWord MEMBER m_leftWord NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QString rightWord MEMBER m_rightWord NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QString movingZoneWord MEMBER m_movingZoneWord NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QString notchWord MEMBER m_notchWord NOTIFY paletteChanged FINAL)
    Q_PROPERTY(QString fontFamily MEMBER m_fontFamily NOTIFY paletteChanged FINAL)
    Q_PROPERTY(qreal textSize MEMBER m_textSize NOTIFY paletteChanged FINAL)  ///< device-independent px
    Q_PROPERTY(QString cursorText READ cursorText NOTIFY cursorMoved FINAL)  ///< where the key cursor is

public:
    explicit FaceChart(QQuickItem* parent = nullptr);

    int view() const { return static_cast<int>(m_view); }
    void setView(int view);
    QList<Track> tracks() const { return m_tracks; }
    void setTracks(const QList<Track>& tracks);
    int selected() const { return m_selected; }
    void setSelected(int number);
    bool isDrawable() const { return m_drawable; }
    void setDrawable(bool drawable);
    bool areCautionsShown() const { return m_cautionsShown; }
    void setCautionsShown(bool shown);
    int tintedSide() const { return m_tintedSide; }
    void setTintedSide(int side);
    QString cursorText() const;

    void paint(QPainter* painter) override;

Q_SIGNALS:
    void viewChanged();
    void tracksChanged();
    void selectedChanged();
    void drawableChanged();
    void cautionsShownChanged();
    void tintedSideChanged();
    void paletteChanged();
    void cursorMoved();
    /// A new line, from entry point to end, in the chart's frame.
    void drawn(QPointF entry, QPointF end);
    /// A placement's points were dragged.
    void moved(int number, QPointF entry, QPointF end);
    /// A placement was chosen; 0: none.
    void chosen(int number);

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class Gesture { none, drawing, movingEntry, movingEnd };

    QTransform frameToItem() const;
    QPointF toFrame(const QPointF& item) const;
    const Track* trackAt(const QPointF& frame) const;
    const Track* selectedTrack() const;
    void dropGesture();
    /// The tracks as they would be if the gesture, or what is carried by keys, ended now.
    QList<Track> shownTracks() const;
    void moveCursor(double dx, double dy);
    void chooseBeside(int step);
    void takeHold(Gesture end);
    void setPoint();
    bool forgetKeys();

    recovery::ChartView m_view = recovery::ChartView::front;
    QList<Track> m_tracks;
    int m_selected = 0;
    bool m_drawable = false;
    bool m_cautionsShown = true;
    int m_tintedSide = 0;
    QColor m_ink{Qt::black};
    QColor m_fold{Qt::darkGray};
    QColor m_left{Qt::black};
    QColor m_right{Qt::black};
    QColor m_caution{Qt::darkGray};
    QColor m_paper{Qt::white};
    QColor m_selection{Qt::gray};
    QString m_leftWord;
    QString m_rightWord;
    QString m_movingZoneWord;
    QString m_notchWord;
    QString m_fontFamily;
    qreal m_textSize = 14;

    Gesture m_gesture = Gesture::none;
    QPointF m_pressed;   ///< frame
    QPointF m_current;   ///< frame
    QPointF m_cursor{recovery::chartWidth / 2, recovery::chartHeight / 2};  ///< frame, for keys
    std::optional<QPointF> m_keyEntry;
    Gesture m_carried = Gesture::none;  ///< the end of the chosen thread that the cursor carries
};

}  // namespace ebbline::face
