import { useMemo, useState } from 'preact/hooks'
import { t, tn } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { Busy } from '../../parts/busy.tsx'
import { PageHead } from '../../parts/page-head.tsx'
import { Balances } from './balances.tsx'
import { FileFound } from './file-found.tsx'
import { Matches } from './matches.tsx'
import { OpenFile } from './open-file.tsx'
import { closesOf, linesOf, type Source } from './source.ts'
import { useMatching } from './use-matching.ts'
import '../monthend.css'

/** The bank's statements against the book: read, matched, answered, and agreed to the cent. */
export function StatementPage() {
  const [sources, setSources] = useState<readonly Source[]>([])
  const list = useMemo(() => linesOf(sources), [sources])
  const closes = useMemo(() => closesOf(sources), [sources])
  const lines = useMemo(() => new Map(list.map((line) => [line.id, line])), [list])
  const { matching, isWorking, error } = useMatching(list)
  const change = (at: number, source: Source | null): void =>
    setSources(sources.flatMap((s, i) => (i === at ? (source ? [source] : []) : [s])))
  return (
    <>
      <PageHead title={t('monthend_page_statement')} lead={t('statement_lead')} />
      <OpenFile onOpened={(source) => setSources((before) => [...before, source])} />
      {sources.map((source, i) =>
        source.isUsed ? (
          <p key={source.name} class="source-used">
            {tn('statement_used', source.file.lines.length, { file: source.name })}{' '}
            <button type="button" class="link" onClick={() => change(i, null)}>
              {t('statement_put_away')}
            </button>
          </p>
        ) : (
          <FileFound
            key={source.name}
            source={source}
            onChange={(changed) => change(i, changed)}
            onUse={(used) => change(i, { ...used, isUsed: true })}
            onDrop={() => change(i, null)}
          />
        ),
      )}
      <WentWrong error={error} />
      {isWorking && <Busy text={t('statement_matching')} />}
      {matching && <Matches matching={matching} lines={lines} />}
      <Balances closes={closes} lines={lines} />
    </>
  )
}
