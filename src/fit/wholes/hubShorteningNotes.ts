import { rearChainlineMm } from '../../mechanics/drive/chainline.ts';
import { type HubCut, type HubSeat, shortenHub, splitCut } from '../../mechanics/wheels/hubShortening.ts';
import { mmText } from '../bridges/rule.ts';
import { readingOf } from '../faces/reading.ts';
import type { Finding } from '../finding.ts';
import type { PilePart } from '../pile.ts';
import { askAt, onlyFace } from '../placed.ts';

/** Air a rotor keeps beside the frame end: our suggestion. */
const ROTOR_AIR_MM = 2;

/** What of a hub bears on where the cut falls. Only the shift of the rim is wanted, so flanges count as zero. */
function seatOf(hub: PilePart, overLocknutMm: number): HubSeat {
  const driver = hub.faces.find(({ kind }) => kind === 'driver-mount');
  const rotor = hub.faces.find(({ kind }) => kind === 'rotor-seat');
  const toothCentre = driver && readingOf(driver, 'toothCentreMm');
  const gap = rotor && readingOf(rotor, 'rotorGapMm');
  return {
    overLocknutMm,
    chainlineMm: toothCentre ? rearChainlineMm(overLocknutMm, toothCentre.mid) : null,
    rotorGapMm: gap?.mid ?? null,
    leftFlangeMm: 0,
    driveFlangeMm: 0,
  };
}

function cutText(seat: HubSeat, cut: HubCut): string {
  const after = shortenHub(seat, cut);
  const shares =
    cut.leftMm === 0
      ? `All ${mmText(cut.driveMm)} off the drive end`
      : `${mmText(cut.driveMm)} off the drive end and ${mmText(cut.leftMm)} off the left`;
  const chainline =
    after.chainlineMm === null ? '' : ` The rear chainline becomes ${mmText(after.chainlineMm)}.`;
  const rotorGap =
    after.rotorGapMm === null
      ? ''
      : after.rotorTouches
        ? ' The rotor would hit the frame.'
        : ` The rotor keeps ${mmText(after.rotorGapMm)} to the dropout.`;
  const way = after.rimToDriveMm < 0 ? 'away from' : 'towards';
  const dish =
    after.rimToDriveMm === 0
      ? ' The rim stays where it is.'
      : ` The rim has to be pulled ${mmText(Math.abs(after.rimToDriveMm))} ${way} the drive side.`;
  return `${shares}:${chainline}${rotorGap}${dish}`.replace(': The', ': the');
}

/** Most that may come off the left end, mm. */
const leftMost = ({ rotorGapMm }: HubSeat, totalMm: number): number =>
  rotorGapMm === null ? totalMm : Math.max(0, Math.min(totalMm, rotorGapMm - ROTOR_AIR_MM));

/** The split that brings the chain straight, as far as the rotor lets it; null when a chainline is not known. */
function straightCut(seat: HubSeat, totalMm: number, frontMm: number | undefined): HubCut | null {
  if (seat.chainlineMm === null || frontMm === undefined) return null;
  const { leftMm } = splitCut(
    totalMm,
    Math.max(-totalMm / 2, Math.min(totalMm / 2, frontMm - seat.chainlineMm)),
  );
  const left = Math.min(leftMm, leftMost(seat, totalMm));
  return { leftMm: left, driveMm: totalMm - left };
}

function whereToCut(
  seat: HubSeat,
  hasRotor: boolean,
  totalMm: number,
  frontMm: number | undefined,
): string[] {
  const most = leftMost(seat, totalMm);
  const straight = straightCut(seat, totalMm, frontMm);
  const rotor = !hasRotor
    ? []
    : seat.rotorGapMm === null
      ? [
          'The hub carries a rotor: how much may come off its left end is not known before the gap to the dropout is measured.',
        ]
      : [
          most === 0
            ? 'Nothing may come off the left end: the rotor would come too near the frame.'
            : `At most ${mmText(most)} may come off the left end, so that the rotor keeps ${mmText(ROTOR_AIR_MM)} of clearance.`,
        ];
  const ways = [
    { driveMm: totalMm, leftMm: 0 },
    { driveMm: totalMm / 2, leftMm: totalMm / 2 },
    ...(straight ? [straight] : []),
  ].filter((cut, at, all) => all.findIndex(({ leftMm }) => Math.abs(leftMm - cut.leftMm) < 0.005) === at);
  const chain =
    straight && frontMm !== undefined && seat.chainlineMm !== null
      ? [chainWords(seat, straight, frontMm)]
      : [];
  return [...rotor, ...chain, ...ways.map((cut) => cutText(seat, cut))];
}

function chainWords(seat: HubSeat, cut: HubCut, frontMm: number): string {
  const offMm = Math.abs(frontMm - (shortenHub(seat, cut).chainlineMm ?? Number.NaN));
  const rest = offMm < 0.05 ? 'runs straight' : `comes as near as ${mmText(offMm)}`;
  return `Towards the ring, ${mmText(frontMm)} from the middle, the chain ${rest} with ${mmText(cut.driveMm)} off the drive end and ${mmText(cut.leftMm)} off the left.`;
}

/**
 * Where the cut of a hub must fall, and what each way of sharing it does to rotor gap, chainline and dish, as
 * notes on the finding that offers it.
 */
export function withShorteningNotes(finding: Finding, parts: readonly PilePart[]): Finding {
  const cut = finding.bridges.find(({ oneWay }) => oneWay?.change === 'cut-hub')?.oneWay;
  const ids = finding.faces.filter(({ faceId }) => faceId === cut?.faceId).map(({ partId }) => partId);
  const hub = parts.find(({ partId, kind }) => ids.includes(partId) && kind !== 'frame' && kind !== 'fork');
  if (!cut || !hub) return finding;
  const spider = hub.kind === 'rear-hub' ? onlyFace(parts, 'spider') : undefined;
  const rotorSeat = hub.faces.find(({ kind }) => kind === 'rotor-seat');
  const seat = seatOf(hub, cut.before);
  const asks = rotorSeat && seat.rotorGapMm === null ? [askAt(hub.partId, rotorSeat, 'rotorGapMm')] : [];
  return {
    ...finding,
    ...(asks.length > 0
      ? { faces: [...finding.faces, { partId: hub.partId, faceId: rotorSeat?.faceId ?? '' }] }
      : {}),
    asks: [...finding.asks, ...asks],
    notes: [
      ...finding.notes,
      ...whereToCut(
        seat,
        rotorSeat !== undefined,
        cut.before - cut.after,
        spider && readingOf(spider.face, 'chainlineMm')?.mid,
      ),
    ],
  };
}
