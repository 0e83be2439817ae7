import { describe, expect, it } from 'vitest';
import { heightOfShare, radiusAt, vesselProfile, volumeShareBelow } from '#renderer/parts/shelf/vessel-profile.ts';
import { fc } from '#tests/properties.ts';

const cylinder = {
  tallness: 1,
  shoulder: 1,
  points: [
    { height: 0, radius: 1 },
    { height: 1, radius: 1 },
  ],
};
const cone = {
  tallness: 1,
  shoulder: 1,
  points: [
    { height: 0, radius: 0 },
    { height: 1, radius: 1 },
  ],
};

describe('heightOfShare(profile, share)', () => {
  it('is the share itself in a cylinder', () => {
    expect(heightOfShare(cylinder, 0.37)).toBeCloseTo(0.37, 9);
  });

  it('is the cube root in a cone that stands on its tip', () => {
    // Volumes of similar cones go as the cube of their height: Euclid, Elements XII.12.
    expect(heightOfShare(cone, 0.125)).toBeCloseTo(0.5, 9);
    expect(volumeShareBelow(cone, 0.5)).toBeCloseTo(0.125, 12);
  });

  it('follows the volume of a truncated cone', () => {
    // Frustum: π h (R² + R r + r²) / 3, from memory. Radii 1 and 1/2: below half the height lie 37/56 of it.
    const tub = {
      ...cone,
      points: [
        { height: 0, radius: 1 },
        { height: 1, radius: 0.5 },
      ],
    };
    expect(volumeShareBelow(tub, 0.5)).toBeCloseTo(37 / 56, 12);
  });

  it('stands at the brim when there is more than fits, and at the bottom when there is nothing', () => {
    expect(heightOfShare(cone, 1.4)).toBe(1);
    expect(heightOfShare(cone, 0)).toBe(0);
    expect(heightOfShare(cone, Number.NaN)).toBe(0);
  });

  it('undoes volumeShareBelow and never falls when more is poured in, for every kind of vessel', () => {
    for (const kind of ['open-jar', 'crown'] as const) {
      const profile = vesselProfile(kind);
      fc.assert(
        fc.property(
          fc.double({ min: 0.001, max: 0.999, noNaN: true }),
          fc.double({ min: 0, max: 0.001, noNaN: true }),
          (share, more) => {
            const height = heightOfShare(profile, share);
            expect(volumeShareBelow(profile, height)).toBeCloseTo(share, 8);
            expect(heightOfShare(profile, share + more)).toBeGreaterThanOrEqual(height - 1e-12);
          },
        ),
      );
    }
  });
});

describe('radiusAt(profile, height)', () => {
  it('lies on the line between two points', () => {
    expect(radiusAt(cone, 0.25)).toBeCloseTo(0.25, 12);
  });

  it('narrows from shoulder to neck', () => {
    const bottle = vesselProfile('swing-top');
    expect(radiusAt(bottle, 0.3)).toBe(1);
    expect(radiusAt(bottle, 1)).toBeLessThan(0.5);
  });
});
