import { Choice } from '../../controls/fields/Choice.tsx';
import type { Bridge } from '../../fit/bridges/bridge.ts';
import { bridgeFacts } from '../../practice/pile/bridgeFacts.ts';
import { bridgeWords } from '../../words/fitWords.ts';

export interface BridgesProps {
  bridges: readonly Bridge[];
  chosen: string | undefined;
  onChoose: (bridgeId: string) => void;
}

function labelOf(bridges: readonly Bridge[]): string {
  if (bridges.length === 1) return 'How to make it fit';
  return bridges.some(({ reversible }) => reversible)
    ? 'Ways to make it fit, best first'
    : 'Ways to make it fit, all permanent';
}

/** The ways over a finding, best first, each with its pieces and what speaks against it. */
export function Bridges({ bridges, chosen, onChoose }: BridgesProps) {
  return (
    <Choice
      label={labelOf(bridges)}
      value={chosen}
      options={bridges.map((bridge) => ({
        value: bridge.bridgeId,
        label: bridgeWords(bridge),
        hint: (
          <>
            {bridgeFacts(bridge).map((words) => (
              <span class="fit-fact" key={words}>
                {words}
              </span>
            ))}
            {bridge.discouraged.map((words) => (
              <b class="fit-fact" key={words}>{`Against it: ${words}`}</b>
            ))}
          </>
        ),
      }))}
      onChoose={onChoose}
    />
  );
}
