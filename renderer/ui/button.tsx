interface ButtonProps extends React.ComponentProps<'button'> {
  /** The page's main button, one as plain as its words, or one without a frame; left out, an ordinary one. */
  look?: 'chief' | 'words' | 'bare';
}

/** A button. It submits no form unless `type` says so. */
export function Button({ look, className, ...props }: ButtonProps) {
  return (
    <button type="button" className={['button', look, className].filter(Boolean).join(' ')} {...props} />
  );
}
