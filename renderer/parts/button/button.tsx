import type { ButtonHTMLAttributes } from 'react';
import { Link } from 'wouter';
import { gluedText } from '#renderer/format/glued.ts';
import './button.css';

type Weight = 'main' | 'plain' | 'quiet' | 'grave';

interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** `main`: the one thing to do here. `quiet`: words only. `grave`: takes something away. */
  readonly weight?: Weight;
}

export function Button({ weight = 'plain', className = '', type = 'button', children, ...rest }: ButtonProps) {
  return (
    <button {...rest} type={type} className={`button is-${weight} ${className}`}>
      {gluedText(children)}
    </button>
  );
}

interface ButtonLinkProps {
  readonly to: string;
  readonly weight?: Weight;
  readonly children: React.ReactNode;
}

/** A link to another page that looks like a button. */
export function ButtonLink({ to, weight = 'plain', children }: ButtonLinkProps) {
  return (
    <Link href={to} className={`button is-${weight}`}>
      {gluedText(children)}
    </Link>
  );
}
