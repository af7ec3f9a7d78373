import { AllPage } from './workings/AllPage.tsx';
import { JointPage } from './workings/JointPage.tsx';

/** The figures of one joint; under the id `all`, every working on its own. */
export function Workings({ jointId }: { jointId: string }) {
  return jointId === 'all' ? <AllPage /> : <JointPage jointId={jointId} />;
}
