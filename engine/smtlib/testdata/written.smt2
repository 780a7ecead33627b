; r 1.0.0: sha256:953e0690d316f6fc0c968bef661b5f063cc451bbdf2fa881d08f0e702051d129
; What crus prove asks of this ruleset, over all assessments to which it applies in which everything is
; recorded, within plausible ranges; only a measure of which a condition asks whether it is recorded can also
; be missing. Quantities are numbers in base units, grades and options are counted from 0, dates are days
; before the assessment. What may be unknown has two names: with =true and with =false. Each question stands
; between push and pop; :status is the answer that crus gave.
(set-info :smt-lib-version 2.6)
(set-logic ALL)

(define-fun larger ((a Real) (b Real)) Real (ite (< a b) b a))
(define-fun smaller ((a Real) (b Real)) Real (ite (< b a) b a))
(define-fun more ((a Int) (b Int)) Int (ite (< a b) b a))
; the whole number nearest to x, halves away from zero
(define-fun nearest ((x Real)) Int (ite (< x 0.0) (- (to_int (+ (- x) 0.5))) (to_int (+ x 0.5))))
; the multiple of step that is nearest to x and lies from lo to hi; x itself where there is none
(define-fun rounded ((x Real) (step Real) (lo Real) (hi Real)) Real
  (let ((at (* step (to_real (nearest (/ x step))))) (up (* step (to_real (- (to_int (- (/ lo step))))))))
    (let ((raised (ite (< at lo) up at)))
      (let ((lowered (ite (> raised hi) (* step (to_real (to_int (/ hi step)))) raised)))
        (ite (or (< lowered lo) (> lowered hi)) x lowered)))))

; --- Measures, of an assessment as one limb sees it
; limb.height: Height, in mm
(declare-const limb.height Real)
(assert (<= 100.0 limb.height 200.0))
; limb.depth: Depth, in mm
(declare-const limb.depth Real)
(assert (<= 0.0 limb.depth 100.0))
; limb.calf_power: Calf power; 0: 0, 1: 1, 2: 2, 3: 3
(declare-const limb.calf_power Int)
(assert (<= 0 limb.calf_power 3))
; whether limb.calf_power is recorded; where it is not, its value means nothing
(declare-const limb.calf_power=recorded Bool)
; person.injection: Injection, in days up to the assessment
(declare-const since.person.injection Int)
(assert (or (<= 0 since.person.injection 43800) (= since.person.injection 1000000000000000000)))

; --- Findings and quantities
(define-fun finding.deep=true () Bool
  (or (not (<= limb.depth 50.0)) (and limb.calf_power=recorded (<= limb.calf_power 1))))
(define-fun finding.deep=false () Bool
  (and
    (<= limb.depth 50.0)
    (or (not limb.calf_power=recorded) (and limb.calf_power=recorded (not (<= limb.calf_power 1))))))
(define-fun applies () Bool true)

; --- Rules: whether the own condition holds, and whether it is in force
(define-fun number.4 () Real (+ limb.height limb.depth))
(define-fun holds.soon () Bool (and (<= since.person.injection 41) (not (< number.4 200.0))))
(define-fun in_force.soon () Bool holds.soon)
(define-fun holds.later=true () Bool finding.deep=true)
(define-fun holds.later=false () Bool finding.deep=false)
(define-fun in_force.later=true () Bool (and holds.later=true (not in_force.soon)))
(define-fun in_force.later=false () Bool (or holds.later=false in_force.soon))

; --- Cautions

; --- Choice visit: what limits leave, and what rules in force prefer
(define-fun choice.visit/advised_on () Bool (or in_force.later=true in_force.soon))
(define-fun choice.visit/decided () Bool
  (or in_force.later=true in_force.later=false limb.calf_power=recorded))
(define-fun choice.visit/later=left () Bool (not in_force.soon))
(define-fun choice.visit/later=weight () Int
  (ite choice.visit/later=left (ite in_force.later=true 1 0) (- 1)))
(define-fun choice.visit/best () Int (more 0 choice.visit/later=weight))
(define-fun choice.visit/soon=level () Bool (= 0 choice.visit/best))
(define-fun choice.visit/later=level () Bool
  (and choice.visit/later=left (= choice.visit/later=weight choice.visit/best)))

; --- The same as the opposite limb sees it, for choices of the person where both limbs get a device
; other.height: Height, in mm
(declare-const other.height Real)
(assert (<= 100.0 other.height 200.0))
; other.depth: Depth, in mm
(declare-const other.depth Real)
(assert (<= 0.0 other.depth 100.0))
; other.calf_power: Calf power; 0: 0, 1: 1, 2: 2, 3: 3
(declare-const other.calf_power Int)
(assert (<= 0 other.calf_power 3))
; whether other.calf_power is recorded; where it is not, its value means nothing
(declare-const other.calf_power=recorded Bool)
(define-fun opposite/number.4 () Real (+ other.height other.depth))
(define-fun opposite/holds.soon () Bool
  (and (<= since.person.injection 41) (not (< opposite/number.4 200.0))))
(define-fun opposite/in_force.soon () Bool opposite/holds.soon)
(define-fun opposite/finding.deep=true () Bool
  (or (not (<= other.depth 50.0)) (and other.calf_power=recorded (<= other.calf_power 1))))
(define-fun opposite/finding.deep=false () Bool
  (and
    (<= other.depth 50.0)
    (or (not other.calf_power=recorded) (and other.calf_power=recorded (not (<= other.calf_power 1))))))
(define-fun opposite/holds.later=true () Bool opposite/finding.deep=true)
(define-fun opposite/holds.later=false () Bool opposite/finding.deep=false)
(define-fun opposite/in_force.later=true () Bool (and opposite/holds.later=true (not opposite/in_force.soon)))
(define-fun opposite/in_force.later=false () Bool (or opposite/holds.later=false opposite/in_force.soon))

; --- Choice visit: what limits leave, and what rules in force prefer
(define-fun both/choice.visit/later.favour () Bool (or in_force.later=true opposite/in_force.later=true))
(define-fun both/choice.visit/soon.only () Bool (or in_force.soon opposite/in_force.soon))
(define-fun both/choice.visit/advised_on () Bool
  (or both/choice.visit/later.favour both/choice.visit/soon.only))
(define-fun both/choice.visit/decided () Bool
  (or
    (and
      (or in_force.later=true in_force.later=false)
      (or opposite/in_force.later=true opposite/in_force.later=false))
    (and limb.calf_power=recorded other.calf_power=recorded)))
(define-fun both/choice.visit/later=left () Bool (not both/choice.visit/soon.only))
(define-fun both/choice.visit/later=weight () Int
  (ite both/choice.visit/later=left (ite both/choice.visit/later.favour 1 0) (- 1)))
(define-fun both/choice.visit/best () Int (more 0 both/choice.visit/later=weight))
(define-fun both/choice.visit/soon=level () Bool (= 0 both/choice.visit/best))
(define-fun both/choice.visit/later=level () Bool
  (and both/choice.visit/later=left (= both/choice.visit/later=weight both/choice.visit/best)))

; --- Questions
(push 1)
; sat: the ruleset applies to some assessment
; unsat: it applies to none
(echo "never_applies r")
(assert applies)
(set-info :status sat)
(check-sat)
(pop 1)

(push 1)
; sat: limits can leave nothing of visit
; unsat: they always leave something
(echo "contradiction visit")
(assert applies)
(assert false)
(set-info :status unsat)
(check-sat)
(pop 1)

(push 1)
; sat: the condition of rule.later can hold
; unsat: it never holds
(echo "never_fires rule.later")
(assert applies)
(assert holds.later=true)
(set-info :status sat)
(check-sat)
(pop 1)

(push 1)
; sat: the condition of rule.soon can hold
; unsat: it never holds
(echo "never_fires rule.soon")
(assert applies)
(assert holds.soon)
(set-info :status sat)
(check-sat)
(pop 1)

(push 1)
; sat: rule.later can be in force
; unsat: it never is
(echo "always_set_aside rule.later")
(assert applies)
(assert in_force.later=true)
(set-info :status sat)
(check-sat)
(pop 1)

(push 1)
; sat: finding.deep can be false
; unsat: it never is
(echo "always_true finding.deep")
(assert applies)
(assert finding.deep=false)
(set-info :status sat)
(check-sat)
(pop 1)

(push 1)
; sat: finding.deep can be true
; unsat: it never is
(echo "always_false finding.deep")
(assert applies)
(assert finding.deep=true)
(set-info :status sat)
(check-sat)
(pop 1)

(push 1)
; sat: several values of visit can be level though a rule prefers some of them
; unsat: none can
(echo "tie visit")
(assert applies)
(assert
  (or
    (and
      choice.visit/decided
      choice.visit/advised_on
      (>= (+ (ite choice.visit/soon=level 1 0) (ite choice.visit/later=level 1 0)) 2)
      (> choice.visit/best 0))
    (and
      both/choice.visit/decided
      both/choice.visit/advised_on
      (>= (+ (ite both/choice.visit/soon=level 1 0) (ite both/choice.visit/later=level 1 0)) 2)
      (> both/choice.visit/best 0))))
(set-info :status unsat)
(check-sat)
(pop 1)

(push 1)
; sat: several values of visit can be left of which no rule prefers any
; unsat: none can
(echo "open_without_preference visit")
(assert applies)
(assert
  (or
    (and
      choice.visit/decided
      choice.visit/advised_on
      (>= (+ (ite choice.visit/soon=level 1 0) (ite choice.visit/later=level 1 0)) 2)
      (not (> choice.visit/best 0)))
    (and
      both/choice.visit/decided
      both/choice.visit/advised_on
      (>= (+ (ite both/choice.visit/soon=level 1 0) (ite both/choice.visit/later=level 1 0)) 2)
      (not (> both/choice.visit/best 0)))))
(set-info :status unsat)
(check-sat)
(pop 1)

(push 1)
(define-fun without/choice.visit/later=left () Bool (not in_force.soon))
(define-fun without/choice.visit/later=weight () Int (ite without/choice.visit/later=left 0 (- 1)))
(define-fun without/choice.visit/best () Int (more 0 without/choice.visit/later=weight))
(define-fun without/choice.visit/soon=level () Bool (= 0 without/choice.visit/best))
(define-fun without/choice.visit/later=level () Bool
  (and without/choice.visit/later=left (= without/choice.visit/later=weight without/choice.visit/best)))
(define-fun without/both/choice.visit/soon.only () Bool (or in_force.soon opposite/in_force.soon))
(define-fun without/both/choice.visit/later=left () Bool (not without/both/choice.visit/soon.only))
(define-fun without/both/choice.visit/later=weight () Int (ite without/both/choice.visit/later=left 0 (- 1)))
(define-fun without/both/choice.visit/best () Int (more 0 without/both/choice.visit/later=weight))
(define-fun without/both/choice.visit/soon=level () Bool (= 0 without/both/choice.visit/best))
(define-fun without/both/choice.visit/later=level () Bool
  (and
    without/both/choice.visit/later=left
    (= without/both/choice.visit/later=weight without/both/choice.visit/best)))
; sat: without rule.later some choice can come out otherwise
; unsat: none can
(echo "adds_nothing rule.later")
(assert applies)
(assert
  (or
    (xor
      (ite choice.visit/advised_on choice.visit/soon=level false)
      (ite in_force.soon without/choice.visit/soon=level false))
    (xor
      (ite choice.visit/advised_on choice.visit/later=level true)
      (ite in_force.soon without/choice.visit/later=level true))
    (xor
      (ite both/choice.visit/advised_on both/choice.visit/soon=level false)
      (ite without/both/choice.visit/soon.only without/both/choice.visit/soon=level false))
    (xor
      (ite both/choice.visit/advised_on both/choice.visit/later=level true)
      (ite without/both/choice.visit/soon.only without/both/choice.visit/later=level true))))
(set-info :status unsat)
(check-sat)
(pop 1)

(push 1)
(define-fun without/in_force.later=true () Bool holds.later=true)
(define-fun without/in_force.later=false () Bool holds.later=false)
(define-fun opposite/without/in_force.later=true () Bool opposite/holds.later=true)
(define-fun opposite/without/in_force.later=false () Bool opposite/holds.later=false)
(define-fun without/choice.visit/decided () Bool
  (or without/in_force.later=true without/in_force.later=false limb.calf_power=recorded))
(define-fun without/choice.visit/later=weight () Int (ite without/in_force.later=true 1 0))
(define-fun without/choice.visit/best () Int (more 0 without/choice.visit/later=weight))
(define-fun without/choice.visit/soon=level () Bool (= 0 without/choice.visit/best))
(define-fun without/choice.visit/later=level () Bool
  (= without/choice.visit/later=weight without/choice.visit/best))
(define-fun without/both/choice.visit/later.favour () Bool
  (or without/in_force.later=true opposite/without/in_force.later=true))
(define-fun without/both/choice.visit/decided () Bool
  (or
    (and
      (or without/in_force.later=true without/in_force.later=false)
      (or opposite/without/in_force.later=true opposite/without/in_force.later=false))
    (and limb.calf_power=recorded other.calf_power=recorded)))
(define-fun without/both/choice.visit/later=weight () Int (ite without/both/choice.visit/later.favour 1 0))
(define-fun without/both/choice.visit/best () Int (more 0 without/both/choice.visit/later=weight))
(define-fun without/both/choice.visit/soon=level () Bool (= 0 without/both/choice.visit/best))
(define-fun without/both/choice.visit/later=level () Bool
  (= without/both/choice.visit/later=weight without/both/choice.visit/best))
; sat: without rule.soon some choice can come out otherwise
; unsat: none can
(echo "adds_nothing rule.soon")
(assert applies)
(assert
  (or
    (xor
      (ite choice.visit/advised_on choice.visit/soon=level false)
      (ite without/in_force.later=true without/choice.visit/soon=level false))
    (xor
      (ite choice.visit/advised_on choice.visit/later=level true)
      (ite without/in_force.later=true without/choice.visit/later=level true))
    (xor
      (ite both/choice.visit/advised_on both/choice.visit/soon=level false)
      (ite without/both/choice.visit/later.favour without/both/choice.visit/soon=level false))
    (xor
      (ite both/choice.visit/advised_on both/choice.visit/later=level true)
      (ite without/both/choice.visit/later.favour without/both/choice.visit/later=level true))))
(set-info :status sat)
(check-sat)
(pop 1)

