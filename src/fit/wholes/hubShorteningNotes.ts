import { rearChainlineMm } from '../../mechanics/chainline.ts';
import { type HubCut, shortenHub } from '../../mechanics/hubShortening.ts';
import type { Finding } from '../finding.ts';
import type { PilePart } from '../pile.ts';
import { readingOf } from '../reading.ts';
import { mm } from '../rule.ts';

function described(part: PilePart, fromMm: number, cut: HubCut): string {
  const driver = part.faces.find(({ kind }) => kind === 'driver-mount');
  const rotor = part.faces.find(({ kind }) => kind === 'rotor-seat');
  const toothCentre = driver && readingOf(driver, 'toothCentreMm');
  const gap = rotor && readingOf(rotor, 'rotorGapMm');
  const after = shortenHub(
    {
      overLocknutMm: fromMm,
      chainlineMm: toothCentre ? rearChainlineMm(fromMm, toothCentre.mid) : null,
      rotorGapMm: gap?.mid ?? null,
      // Only the shift of the rim is wanted here, and that does not depend on where the flanges stand.
      leftFlangeMm: 0,
      driveFlangeMm: 0,
    },
    cut,
  );
  const shares = `${mm(cut.driveMm)} off the drive end, ${mm(cut.leftMm)} off the left`;
  const chainline = after.chainlineMm === null ? '' : `, chainline ${mm(after.chainlineMm)}`;
  const rotorGap =
    after.rotorGapMm === null
      ? ''
      : `, rotor gap ${mm(after.rotorGapMm)}${after.rotorTouches ? ': it meets the frame' : ''}`;
  const way = after.rimToDriveMm < 0 ? 'away from' : 'towards';
  const dish =
    after.rimToDriveMm === 0
      ? ', rim stays'
      : `, rim ${mm(Math.abs(after.rimToDriveMm))} ${way} the drive side`;
  return `${shares}${chainline}${rotorGap}${dish}.`;
}

/** What each way of sharing a hub's cut does to chainline, rotor and dish, as notes on the finding that offers it. */
export function withShorteningNotes(finding: Finding, parts: readonly PilePart[]): Finding {
  const cut = finding.bridges.find(({ oneWay }) => oneWay?.change === 'cut-hub')?.oneWay;
  const part = parts.find(({ faces }) => faces.some(({ faceId }) => faceId === cut?.faceId));
  if (!cut || !part) return finding;
  const totalMm = cut.before - cut.after;
  const ways = [
    { driveMm: totalMm, leftMm: 0 },
    { driveMm: totalMm / 2, leftMm: totalMm / 2 },
  ];
  return {
    ...finding,
    notes: [...finding.notes, ...ways.map((way) => described(part, cut.before, way))],
  };
}
