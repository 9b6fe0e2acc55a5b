/**
 * Words of somebody who may harm themselves, generous on purpose: an answer too many costs a smile. Expressions of at most
 * five words, their marks as words of their own.
 */
export const despair = {
  selfHarm: `suicide suicidal suicidel sucidal kms unalive unaliving
    kill_myself killing_myself kill_my_self killing_my_self kill_meself
    hurt_myself_on_purpose harm_myself harming_myself cut_myself_on_purpose cutting_myself_on_purpose
    self_harm self_-_harm self_harming selfharm
    end_my_life ending_my_life end_my_own_life ending_my_own_life end_this_life
    take_my_life take_my_own_life taking_my_life taking_my_own_life
    end_it_all ending_it_all
    dont_want_to_live dont_wanna_live dont_want_to_be_alive not_want_to_live not_want_to_be_alive
    dont_want_to_be_here dont_want_to_exist dont_want_to_wake_up not_want_to_wake_up never_wake_up_again
    i_want_to_die i_wanna_die i_just_want_to_die i_just_wanna_die i_wish_to_die i_hope_i_die
    want_to_be_dead wanna_be_dead wish_i_was_dead wish_i_were_dead wish_i_was_never_born
    i_cant_go_on i_cannot_go_on cant_go_on_anymore cant_go_on_any_more cant_go_on_like_this cant_go_on_living
    cannot_go_on_like_this cannot_go_on_living
    no_point_in_living no_point_of_living no_point_living no_point_in_life no_point_to_life
    point_of_living point_in_living point_of_life no_reason_to_live nothing_to_live_for nothing_left_to_live
    not_worth_living isnt_worth_living better_off_dead better_off_without_me
    give_up_on_life giving_up_on_life given_up_on_life tired_of_living sick_of_living tired_of_being_alive
    jump_off_a_bridge hang_myself hanging_myself shoot_myself drown_myself overdose_myself swallow_all_my_pills
    take_all_my_pills took_all_my_pills`,
} as const;
