/** Plane geometry in millimetres: no drawing, no electricity. */
export type { Box, Point, Side } from './point.ts';
export {
	EMPTY_BOX,
	boxCentre,
	boxContainsBox,
	boxContainsPoint,
	boxHeight,
	boxOfPoints,
	boxWidth,
	boxesIntersect,
	distanceToBox,
	inflateBox,
	isEmptyBox,
	translateBox,
	unionBoxes
} from './box.ts';
export { addTurns, isHorizontal, oppositeSide, outward, rotateBox, rotatePoint, rotateSide, type QuarterTurn } from './rotate.ts';
export { distance, distanceToSegment, nearestFraction, pointBetween, samePoint, segmentIntersectsBox } from './segment.ts';
export {
	distanceToPolyline,
	nearestOnPolyline,
	pointAtFraction,
	polylineIntersectsBox,
	polylineLength,
	type NearestOnPolyline
} from './polyline.ts';
export { isOrthogonal, simplifyOrthogonal } from './orthogonal.ts';
export { snap, snapPoint } from './snap.ts';
export { SpatialIndex, type Near } from './spatial-index.ts';
export { alignmentOf, guidesOf, type Alignment, type Around, type Guide, type Tie } from './guides.ts';
export { ALIGNMENTS, alignBoxes, distributeBoxes, type AlignTo, type DistributeAlong } from './arrange.ts';
