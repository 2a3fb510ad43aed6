/** How much of a target is in, with a mark where it should be by now. */
export function ProgressBar(props: {
  readonly value: number
  readonly most: number
  readonly course: number | null
  readonly label: string
}) {
  const at = (minor: number): string => `${Math.min(100, Math.max(0, (minor / props.most) * 100)).toFixed(1)}%`
  return (
    <div class="progress">
      <div class="progress-track" aria-hidden="true">
        <div class="progress-in" style={{ inlineSize: at(props.value) }} />
        {props.course !== null && <div class="progress-course" style={{ insetInlineStart: at(props.course) }} />}
      </div>
      <span class="progress-label">{props.label}</span>
    </div>
  )
}
