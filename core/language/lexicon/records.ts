/** What a keeper reports of a coral, as done: it came, it was moved, it is gone. Fears and questions are no reports. */
export const records = {
  came: `added i_got i_bought just_got just_bought got_a got_my got_some got_new bought_a picked_up brought_home
    came_today came_yesterday arrived`,
  moved: `i_moved moved_my moved_the moved_it have_moved just_moved relocated_my`,
  kept: `kept_the kept_one kept_a kept_two kept_some keeping_the keeping_one the_rest_stays the_other_stays`,
  gone: `died has_died have_died is_dead are_dead perished lost_my lost_a lost_the i_lost sold_my i_sold sold_the
    gave_away rehomed didnt_make_it did_not_make_it`,
} as const;
