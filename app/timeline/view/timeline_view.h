#pragma once
// The lesson along time, on screen: frozen lane heads and ruler, zoom, selection, dragging by
// pointer, by keyboard and by click. Every change goes through LessonDocument::apply.
//
// Keys: arrows move the focus between blocks; Ctrl and arrows move the block by a grain or to the
// next lane; + and - move it by a grain; Enter picks it up and puts it down, Escape lets go; Delete
// takes it off; P pins it; Ctrl with +, - and 0 zooms.

#include <QAbstractScrollArea>
#include <QBasicTimer>
#include <QElapsedTimer>
#include <memory>
#include <optional>
#include <vector>

#include "timeline/primitives_qt.h"
#include "timeline_view/proposal.h"
#include "timeline_view/tool.h"

namespace rangeline {

/// Drags from the shelf carry the ids of steps; see shelf_drag.h.
class TimelineView : public QAbstractScrollArea, private ToolAdapter {
    Q_OBJECT

  public:
    /// The document outlives the view.
    explicit TimelineView(LessonDocument& document, QWidget* parent = nullptr);
    ~TimelineView() override;

    /// The placements that are selected; the first has the focus.
    const std::vector<PlacementKey>& selection() const override { return selection_; }
    /// Ignores placements that the lesson does not have. Does not scroll.
    void select(const std::vector<PlacementKey>& keys) override;
    /// Selects it and scrolls to it.
    void reveal(const PlacementKey& key);
    /// Scrolls to a time and, if it has a lane, to a piece of equipment.
    void reveal(const Interval& interval, const EquipmentRef& equipment);

    /// Picks steps up as a click on the shelf does: the next click or Enter in the timeline puts
    /// them down, Escape lets go. Steps that the lesson does not know are left out.
    void pickUp(const std::vector<StepKey>& steps);
    bool hasInHand() const;

    /// A block that is dropped on this widget is taken off the timeline. Null: none.
    void setShelf(QWidget* shelf) { shelf_ = shelf; }

    /// Shows an edit without making it: ghosts where things would be. Empty: no longer.
    void showPreview(const SetPlacements& edit);

    /// Marks when these placements begin and end in rehearsals; the numbers of items are filled in.
    void showSpreads(std::vector<std::pair<PlacementKey, SpreadMark>> spreads);

    /// Only lanes that something is in, or all of them (the usual).
    void setOnlyUsedLanes(bool only);
    bool onlyUsedLanes() const { return onlyUsedLanes_; }

    double unitsPerMinute() const { return unitsPerMinute_; }
    /// Zooms with the time at that x of the viewport staying where it is.
    void zoom(double factor, double anchorX);

    const TimelineScene& scene() const { return scene_; }
    const LessonDocument& document() const { return document_; }
    /// Where a rectangle of the scene is in the viewport.
    QRectF toViewport(const QRectF& rect) const;
    /// What the block says to a screen reader.
    QString describe(int item) const;
    /// Makes a move as one step of undo; for the keyboard and for screen readers.
    void nudge(int grains, int lanes);

    QSize sizeHint() const override { return {900, 480}; }

  public Q_SLOTS:
    void zoomIn();
    void zoomOut();
    /// The whole lesson in the window.
    void zoomToFit();
    void removeSelected();
    void togglePinOfSelected();
    /// Takes the selected step in hand: the next click or Enter puts it down.
    void pickUpSelected();
    void putDown();
    void letGo();
    /// By one grain, as the keys + and - do.
    void nudgeLater() { nudge(1, 0); }
    void nudgeEarlier() { nudge(-1, 0); }

  Q_SIGNALS:
    void selectionChanged();
    /// The time under the pointer, or of the focused block while the keyboard leads.
    void timeHovered(rangeline::Instant at);
    /// What is going on, for a status line and for screen readers. Empty: nothing.
    void statusChanged(const QString& text);
    /// Whether something is in hand, picked up by click or key and not yet put down.
    void inHandChanged(bool inHand);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void timerEvent(QTimerEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    bool event(QEvent* event) override;
    bool viewportEvent(QEvent* event) override;

  private:
    ToolAdapter& asAdapter() { return *this; }
    const UseIndex& index() const override { return document_.index(); }
    int laneCount() const override { return static_cast<int>(scene_.model().lanes.size()); }
    DropTarget targetOf(int lane) const override { return scene_.targetOf(lane); }
    int mainLaneOf(const PlacementKey& key) const override;
    Instant snapped(const SnapRequest& request) const override;
    SetPlacements placeInTurn(std::span<const int> tasks, Instant start,
                              const DropTarget& target) const override;
    void propose(const Proposal& proposal) override;
    void withdraw() override;
    void commit(const Proposal& proposal, ActionKind kind) override;

    void lessonChanged(const LessonChange& change);
    void readLesson();
    void layOutAgain();
    void styleAgain();
    void updateScrollBars();
    QRectF plotArea() const;
    QPointF offset() const;
    PointerAt pointerAt(const QPointF& inViewport, Qt::KeyboardModifiers modifiers) const;
    bool isAtEdge(const QPointF& inViewport) const;
    void toolMoved(const QPointF& inViewport, Qt::KeyboardModifiers modifiers);
    void setTool(std::unique_ptr<Tool> tool);
    void toolDone(bool busy);
    void scrollTo(const QRectF& rect);
    void announce(const QString& text);
    void hover(const QPointF& inViewport);

    bool handKey(int key);
    bool editKey(QKeyEvent* event);
    bool focusKey(QKeyEvent* event);
    void moveFocus(int item);
    int focusItem() const;

    void paintPart(QPainter& painter, const Picture& picture, const QRectF& clip,
                   const QPointF& shift) const;
    void paintFocus(const PaintJob& job, int block, Picture& out) const;
    void paintReasons(QPainter& painter) const;
    QPointF reasonCorner(const QSizeF& size) const;
    void paintEmpty(QPainter& painter) const;
    const Palette& colours() const;
    const TimelineOverlay& overlay() const;

    LessonDocument& document_;
    TimelineScene scene_;
    TimelineStyle style_;
    std::unique_ptr<QtFonts> fonts_;
    double unitsPerMinute_ = 4;
    bool onlyUsedLanes_ = false;
    bool fitting_ = true;  ///< the whole lesson is shown however wide the view, until zoomed

    std::vector<PlacementKey> selection_;
    std::vector<std::pair<PlacementKey, SpreadMark>> spreads_;
    mutable std::optional<TimelineOverlay> overlay_;
    std::unique_ptr<Tool> tool_;
    std::optional<Proposal> proposal_;
    ProposalLook look_;
    QBasicTimer autoScroll_;
    bool edgesScroll_ = false;  ///< while dragging
    QPoint beforeScrolling_;    ///< where the bars stood when an edge began to scroll
    QPointF lastPointer_;
    QWidget* shelf_ = nullptr;
    bool dragFromShelf_ = false;
    GestureId nudging_ = 0;  ///< of moves by key that become one step of undo
    QElapsedTimer sinceNudge_;
    bool committing_ = false;
};

}  // namespace rangeline
