import { lazy } from 'react';

// The drawing library is the largest part of the page and the first screen does without: it comes when a chart is drawn, or when the page
// has nothing else to do.

const factor = () => import('./factor-drawing.tsx');
const course = () => import('./course-drawing.tsx');
const seen = () => import('./seen-chart.tsx');
const place = () => import('./place-drawing.tsx');
const rightness = () => import('./rightness-drawing.tsx');
const lanes = () => import('./lane-drawing.tsx');
const timeline = () => import('./timeline-drawing.tsx');

export const FactorDrawing = lazy(async () => ({ default: (await factor()).FactorDrawing }));
export const CourseDrawing = lazy(async () => ({ default: (await course()).CourseDrawing }));
export const SeenChart = lazy(async () => ({ default: (await seen()).SeenChart }));
export const PlaceDrawing = lazy(async () => ({ default: (await place()).PlaceDrawing }));
export const LaneDrawing = lazy(async () => ({ default: (await lanes()).LaneDrawing }));
export const TimelineDrawing = lazy(async () => ({ default: (await timeline()).TimelineDrawing }));
export const RightnessDrawing = lazy(async () => ({ default: (await rightness()).RightnessDrawing }));

/** Fetches them ahead, so that the first chart waits for nothing. */
export function fetchDrawings(): void {
  for (const drawing of [factor, course, seen, place, rightness, lanes, timeline])
    void drawing().catch(() => undefined);
}
